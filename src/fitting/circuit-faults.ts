import type { Plain } from '../formula/given.ts'
import type { FaultGiven } from '../trade/circuit/fault.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import type { PlainPart, Settled } from '../trade/circuit/part.ts'
import { settle } from '../trade/circuit/settle.ts'
import { ohmAt } from '../trade/circuit/warmth.ts'
import type { CircuitFit } from './circuit.ts'
import { drawnCircuit } from './circuit-fit.ts'
import { carries, jointsOhm, loadId, runId, SOURCE, wireOf } from './circuit-parts.ts'

/** A run with a wire, in two where a protector sits: a short may stand there. */
export interface Cut {
  readonly run: string
  /** Of the run, that the piece reaches to. */
  readonly end: 'from' | 'to'
  /** Of the wire of the run. */
  readonly share: number
  readonly piece: string
  readonly point: string
}

/** What a walk of faults is told beside the circuit itself. */
export interface FaultRoles {
  readonly threads: readonly string[]
  readonly points: readonly string[]
  /** Runs in two: a piece of the wire at one end, then the protector with the rest. */
  readonly cuts: readonly Cut[]
  /** By load: what stands over it where it is fed. */
  readonly fedV: ReadonlyMap<string, number>
  readonly cranking: { readonly currentA: number; readonly at: string; readonly straps: readonly string[] } | null
}

/**
 * The circuit as a walk of faults takes it: at the nominal, linear. A load of constant power or current counts as the resistance it has
 * before the fault, a wire as warm as it was; an open contact stays open,
 * and all threads conduct.
 */
export function faultsGiven(fit: Plain<CircuitFit>, { threads, points, cuts, fedV, cranking }: FaultRoles): FaultGiven {
  const circuit = drawnCircuit(fit)
  const settled = settle(circuit)
  const whole: readonly PlainElement[] = circuit.parts.flatMap(part => linear(part, settled) ?? [])
  const elements = cuts.reduce((so, cut) => inTwo(so, cut, wireOhm(whole, cut.run, fit)), whole)
  const there = new Set(elements.map(({ id }) => id))
  const nodes = new Set(elements.flatMap(({ from, to }) => [from, to]))
  const known = (ids: readonly string[]) => ids.map(runId).filter(id => there.has(id))
  return {
    network: { ground: fit.ground, elements },
    loads: fit.loads.map(({ name }) => loadId(name)).filter(id => there.has(id)),
    fedV: Object.fromEntries([...fedV].map(([name, volts]) => [loadId(name), volts])),
    protectors: fit.protectors.map(({ run, style, ratingA }) => ({ id: runId(run), style, ratingA })).filter(({ id }) => there.has(id)),
    capacities: capacitiesOf(fit)
      .flatMap(one => [one, ...cuts.flatMap(({ run, piece }) => (runId(run) === one.id ? [{ ...one, id: runId(piece) }] : []))])
      .filter(({ id }) => there.has(id)),
    threads: known(threads),
    points: points.filter(point => nodes.has(point)),
    cranking: cranking === null || !there.has(SOURCE) || !nodes.has(cranking.at) ? null : { ...cranking, straps: known(cranking.straps) }
  }
}

/** Of the wire of a run, as warm as it was. */
function wireOhm(elements: readonly PlainElement[], run: string, { runs }: Plain<CircuitFit>): number {
  const found = elements.find(({ id }) => id === runId(run))
  return found?.kind !== 'resistor' ? 0 : found.resistanceOhm - jointsOhm(runs.find(({ id }) => id === run)!)
}

function inTwo(elements: readonly PlainElement[], { run, end, share, piece, point }: Cut, wholeOhm: number): readonly PlainElement[] {
  const pieceOhm = Math.max(0, share * wholeOhm)
  return elements.flatMap((one): readonly PlainElement[] => {
    if (one.id !== runId(run) || one.kind !== 'resistor') return [one]
    const ends = end === 'from' ? { from: one.from, to: point } : { from: point, to: one.to }
    const rest = { ...one, [end]: point, resistanceOhm: Math.max(0, one.resistanceOhm - pieceOhm) }
    return [{ kind: 'resistor', id: runId(piece), ...ends, resistanceOhm: pieceOhm }, rest]
  })
}

function capacitiesOf({ runs }: Plain<CircuitFit>): FaultGiven['capacities'] {
  return runs.flatMap(run => {
    const wired = wireOf(run)
    const current = wired === undefined ? null : carries(wired)
    return current?.kind === 'ampacity' ? [{ id: runId(run.id), ampacityA: current.ampacityA }] : []
  })
}

/** What warms itself by its temperature: where nothing flows, voltage over current is rounding. */
function linear(part: PlainPart, { flows, partC }: Settled): PlainElement | undefined {
  const { id, from, to } = part
  if (part.kind === 'resistor' || part.kind === 'source') return part
  if (part.kind === 'wire' || part.kind === 'warming') return { kind: 'resistor', id, from, to, resistanceOhm: ohmAt(part, partC[id]!) }
  const { currentA, dropV } = flows[id]!
  // Where it drives its current against the voltage it is a source, and stays one.
  if (part.kind === 'draw' && !(dropV * currentA > 0)) return part
  return currentA === 0 ? undefined : { kind: 'resistor', id, from, to, resistanceOhm: Math.abs(dropV / currentA) }
}
