import type { BareWay } from '../../trade/circuit/bare-wire.ts'
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
}

/**
 * Whether sources have a lead of their own up to a protector, and that carries for good all that they can drive, as that of a panel
 * behind its controller: against that nothing has to open. Unsure where nobody told how it lies. What is inside a battery limits nothing, nor does what nobody told.
 */
export function isLimited(
  { source: { ground }, 'other-sources': others, loads }: JobCircuit,
  { start, way, pieces }: Lead,
  carriesA: (run: string) => number | null
): 'yes' | 'no' | 'unsure' {
  const here = others.filter(one => fedPoint(one, ground) === start)
  if (here.length === 0 || !here.every(one => Number.isFinite(mostA(one)))) return 'no'
  const points = [...way.keys()]
  const atPoint = (point: string) => pieces.filter(({ from, to }) => from === point || to === point).length
  const isLead = points.every(
    point => atPoint(point) === (point === start ? 1 : 2) && loads.every(({ from, to }) => from !== point && to !== point)
  )
  const allA = here.map(mostA).reduce((sum, one) => sum + one)
  const wires = [...way.values()].flatMap(({ stretches }) => stretches.filter(({ lengthMm }) => lengthMm > 0))
  const carried = wires.map(({ id, cut }) => carriesA(cut?.run ?? id))
  if (!isLead || carried.some(one => one !== null && one < allA)) return 'no'
  return carried.includes(null) ? 'unsure' : 'yes'
}

const BATTERY = /batter|accumulator/i

/** At a dead short. */
function mostA({ what, voltage, resistance }: Source): number {
  return resistance.assumed === undefined && resistance.low > 0 && !BATTERY.test(what)
    ? Math.max(voltage.high, -voltage.low) / resistance.low
    : Number.POSITIVE_INFINITY
}
