import type { Plain } from '../formula/given.ts'
import { settle } from '../trade/circuit/settle.ts'
import type { CircuitFit } from './circuit.ts'
import { circuitOf } from './circuit-fit.ts'
import { loadId, runId } from './circuit-parts.ts'

/** What stands at every point of a circuit against its 0 V node, and what flows in every run: names stand beside numbers, never as keys. */
export function circuitPoints(circuit: Plain<CircuitFit>) {
  const { nodeV, flows } = settle(circuitOf(circuit))
  return {
    points: Object.entries(nodeV).map(([name, pointV]) => ({ name, pointV })),
    loads: circuit.loads.map(({ name }) => ({ name, loadA: flows[loadId(name)]!.currentA, loadW: flows[loadId(name)]!.powerW })),
    runs: circuit.runs.map(({ id, from, to }) => ({ from, to, runA: flows[runId(id)]!.currentA, runDropV: flows[runId(id)]!.dropV }))
  }
}
