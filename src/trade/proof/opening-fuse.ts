import type { Plain } from '../../formula/given.ts'
import { type Fault, OPEN_OHM, resisting } from './fault.ts'
import type { Tested } from './probe.ts'
import { ProbedCircuit } from './probed-circuit.ts'

/**
 * Nobody said what it is rated for. It carries its load at three quarters of its rating or so,
 * and opens within a minute at twice the rating (common practice): with this many times its load it is open.
 */
const OPENS_TIMES = 2.5

/** A circuit with a fault in it. One that draws too much is measured with its fuse or breaker open: the one that is overloaded most. */
export function faulted(fault: Fault, tested: Plain<Tested>, size: number): ProbedCircuit {
  const circuit = new ProbedCircuit(fault.changes(tested, size))
  const open = overloaded(circuit, fault)
  return open === undefined ? circuit : new ProbedCircuit(resisting(open, () => OPEN_OHM)(circuit.tested, size))
}

function overloaded(circuit: ProbedCircuit, { behind = [] }: Fault): string | undefined {
  const times = behind.flatMap(({ id, currentA }) => (currentA === 0 ? [] : [{ id, times: Math.abs(circuit.currentA(id) / currentA) }]))
  const most = times.sort((a, b) => b.times - a.times)[0]
  return most !== undefined && most.times > OPENS_TIMES ? most.id : undefined
}
