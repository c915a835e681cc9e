import type { Plain } from '../formula/given.ts'
import type { FaultGiven } from '../trade/circuit/fault.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import type { PlainPart, Settled } from '../trade/circuit/part.ts'
import { settle } from '../trade/circuit/settle.ts'
import type { CircuitFit } from './circuit.ts'
import { drawnCircuit } from './circuit-fit.ts'
import { carries, loadId, runId, wireOf } from './circuit-parts.ts'

/** What a walk of faults is told beside the circuit itself. */
export interface FaultRoles {
  readonly threads: readonly string[]
  readonly points: readonly string[]
  readonly cranking: { readonly currentA: number; readonly at: string; readonly straps: readonly string[] } | null
}

/**
 * The circuit as a walk of faults takes it: at the nominal, linear. A load of constant power or current counts as the resistance it has
 * before the fault, a wire as warm as it was; an open contact stays open,
 * and all threads conduct.
 */
export function faultsGiven(fit: Plain<CircuitFit>, { threads, points, cranking }: FaultRoles): FaultGiven {
  const circuit = drawnCircuit(fit)
  const settled = settle(circuit)
  const elements = circuit.parts.flatMap(part => linear(part, settled) ?? [])
  const there = new Set(elements.map(({ id }) => id))
  const known = (ids: readonly string[]) => ids.map(runId).filter(id => there.has(id))
  return {
    network: { ground: fit.ground, elements },
    loads: fit.loads.map(({ name }) => loadId(name)).filter(id => there.has(id)),
    protectors: fit.protectors.map(({ run, style, ratingA }) => ({ id: runId(run), style, ratingA })).filter(({ id }) => there.has(id)),
    capacities: capacitiesOf(fit).filter(({ id }) => there.has(id)),
    threads: known(threads),
    points,
    cranking: cranking === null ? null : { ...cranking, straps: known(cranking.straps) }
  }
}

function capacitiesOf({ runs }: Plain<CircuitFit>): FaultGiven['capacities'] {
  return runs.flatMap(run => {
    const wired = wireOf(run)
    const current = wired === undefined ? null : carries(wired)
    return current?.kind === 'ampacity' ? [{ id: runId(run.id), ampacityA: current.ampacityA }] : []
  })
}

function linear(part: PlainPart, { flows }: Settled): PlainElement | undefined {
  const { id, from, to } = part
  if (part.kind === 'resistor' || part.kind === 'source') return part
  const { currentA, dropV } = flows[id]!
  // Where it drives its current against the voltage it is a source, and stays one.
  if (part.kind === 'draw' && !(dropV * currentA > 0)) return part
  if (part.kind === 'wire' && currentA === 0) return { kind: 'resistor', id, from, to, resistanceOhm: part.coldOhm + part.jointsOhm }
  return currentA === 0 ? undefined : { kind: 'resistor', id, from, to, resistanceOhm: Math.abs(dropV / currentA) }
}
