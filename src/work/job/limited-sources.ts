import { kindsOf } from '../../job/source-kinds.ts'
import type { BareWay } from '../../trade/circuit/bare-wire.ts'
import { type Carried, mayCarry } from './carried-by.ts'
import type { JobCircuit } from './circuit-wiring.ts'
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

export interface Limited {
  readonly mostA: number
  /** Whether the lead carries it; no where nobody told how that lies. */
  readonly isKnown: boolean
}

/**
 * What sources drive at most that have a lead of their own up to a protector, where that carries it for good, as that of a panel
 * behind its controller: against that nothing has to open. Null where it does not, or surely not. What is inside a battery limits
 * nothing, nor does what nobody told.
 */
export function limitedLead(
  { source: { ground }, 'other-sources': others, loads }: JobCircuit,
  lead: Lead,
  carried: (run: string) => Carried
): Limited | null {
  const { start, way, pieces, stops } = lead
  const here = others.filter(one => fedPoint(one, ground) === start)
  const mostA = here.map(greatestA).reduce((sum, one) => sum + one, 0)
  if (here.length === 0 || !Number.isFinite(mostA)) return null
  const atPoint = (point: string) => pieces.filter(({ from, to }) => from === point || to === point).length
  const isLead = [...way.keys()].every(point =>
    point === start
      ? atPoint(point) === 1
      : atPoint(point) === 2 && !stops.has(point) && loads.every(({ from, to }) => from !== point && to !== point)
  )
  const wires = [...way.values()].flatMap(({ stretches }) => stretches.filter(({ lengthMm }) => lengthMm > 0))
  const carry = wires.map(({ id, cut }) => carried(cut?.run ?? id))
  if (!isLead || !carry.every(one => mayCarry(one, mostA))) return null
  return { mostA, isKnown: carry.every(({ carriesA }) => carriesA !== null) }
}

/** At a dead short. */
function greatestA({ what, voltage, resistance }: Source): number {
  const kinds = kindsOf(what)
  return resistance.assumed === undefined && resistance.low > 0 && !kinds.includes('battery') && !kinds.includes('unknown')
    ? Math.max(voltage.high, -voltage.low) / resistance.low
    : Number.POSITIVE_INFINITY
}
