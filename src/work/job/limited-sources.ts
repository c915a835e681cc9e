import { kindsOf } from '../../job/source-kinds.ts'
import type { BareWay } from '../../trade/circuit/bare-wire.ts'
import { isAt, type JobCircuit } from './circuit-wiring.ts'
import { minusWay } from './minus-way.ts'
import type { Piece } from './wire-before.ts'

type Source = JobCircuit['other-sources'][number]

/** The point that a source beside the bus feeds. */
export function fedPoint({ from, to }: Source, ground: string): string {
  return to === ground ? from : to
}

interface Lead {
  readonly start: string
  readonly way: ReadonlyMap<string, BareWay<Piece>>
  /** Of all runs. */
  readonly pieces: readonly Piece[]
  /** Where sources begin, and the 0 V node. */
  readonly stops: ReadonlySet<string>
}

/**
 * What sources drive at most that have a lead of their own up to a protector, where that carries it for good, as that of a panel
 * behind its controller, and so does what leads back to them: against that nothing has to open. Null where it does not. What is inside
 * a battery limits nothing, nor does what nobody told, nor what stands on another source.
 */
export function limitedLeadA(circuit: JobCircuit, lead: Lead, carriedA: (run: string) => number): number | null {
  const { ground } = circuit.source
  const here = circuit['other-sources'].filter(one => fedPoint(one, ground) === lead.start)
  const mostA = sumOf(here)
  if (here.length === 0 || !Number.isFinite(mostA) || !isLead(circuit, lead)) return null
  const backs = here.map(one => minusWay(circuit, one))
  const comesBack = backs.every(back => back?.runs.every(run => carriedA(run) >= sumOf(back.sources)) === true)
  return comesBack && wiresOf(lead).every(run => carriedA(run) >= mostA) ? mostA : null
}

/** Nothing else hangs on it, and no other source. */
function isLead({ loads }: JobCircuit, { start, way, pieces, stops }: Lead): boolean {
  const atPoint = (point: string) => pieces.filter(one => isAt(one, point)).length
  return [...way.keys()].every(point =>
    point === start ? atPoint(point) === 1 : atPoint(point) === 2 && !stops.has(point) && !loads.some(one => isAt(one, point))
  )
}

function wiresOf({ way }: Lead): readonly string[] {
  const stretches = [...way.values()].flatMap(one => one.stretches.filter(({ lengthMm }) => lengthMm > 0))
  return stretches.map(({ id, cut }) => cut?.run ?? id)
}

function sumOf(sources: readonly Source[]): number {
  return sources.map(greatestA).reduce((sum, one) => sum + one, 0)
}

/** At a dead short. */
function greatestA({ what, voltage, resistance }: Source): number {
  const kinds = kindsOf(what)
  return resistance.assumed === undefined && resistance.low > 0 && !kinds.includes('battery') && !kinds.includes('unknown')
    ? Math.max(voltage.high, -voltage.low) / resistance.low
    : Number.POSITIVE_INFINITY
}
