import { kindsOf } from '../../job/source-kinds.ts'
import type { BareWay } from '../../trade/circuit/bare-wire.ts'
import { returnPoints } from '../../trade/circuit/guarding.ts'
import { BUS, type JobCircuit } from './circuit-wiring.ts'
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
 * behind its controller: against that nothing has to open. Null where it does not. What is inside a battery limits nothing, nor does
 * what nobody told, nor what stands on another source.
 */
export function limitedLeadA(
  { source: { ground }, 'other-sources': others, loads, runs }: JobCircuit,
  lead: Lead,
  carriedA: (run: string) => number
) {
  const { start, way, pieces, stops } = lead
  const here = others.filter(one => fedPoint(one, ground) === start)
  const minus = new Set([ground, ...returnPoints({ bus: BUS, ground, runs })])
  const mostA = here.map(one => (minus.has(one.from) || minus.has(one.to) ? greatestA(one) : Number.POSITIVE_INFINITY))
  const sumA = mostA.reduce((sum, one) => sum + one, 0)
  const atPoint = (point: string) => pieces.filter(({ from, to }) => from === point || to === point).length
  const isLead = [...way.keys()].every(point =>
    point === start
      ? atPoint(point) === 1
      : atPoint(point) === 2 && !stops.has(point) && loads.every(({ from, to }) => from !== point && to !== point)
  )
  const wires = [...way.values()].flatMap(({ stretches }) => stretches.filter(({ lengthMm }) => lengthMm > 0))
  const isCarried = wires.every(({ id, cut }) => carriedA(cut?.run ?? id) >= sumA)
  return here.length > 0 && Number.isFinite(sumA) && isLead && isCarried ? sumA : null
}

/** At a dead short. */
function greatestA({ what, voltage, resistance }: Source): number {
  const kinds = kindsOf(what)
  return resistance.assumed === undefined && resistance.low > 0 && !kinds.includes('battery') && !kinds.includes('unknown')
    ? Math.max(voltage.high, -voltage.low) / resistance.low
    : Number.POSITIVE_INFINITY
}
