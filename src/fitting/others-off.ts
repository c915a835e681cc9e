import { answered } from '../formula/answered.ts'
import { nominalOf } from '../formula/bounds.ts'
import { Given, type Plain } from '../formula/given.ts'
import { atEnds, cornersOf } from './at-ends.ts'
import type { CircuitFit } from './circuit.ts'
import { settledLoads } from './circuit-fit.ts'

/** Off, a load lets through next to nothing, and still ties the points that it hangs between. */
const OFF_OHM = new Given(1e9)

/** More than rounding. */
const MORE = 1 + 1e-9

/** A circuit, and the loads in it that are asked about. */
interface Fed {
  readonly fit: CircuitFit
  readonly names: readonly string[]
}

/** What these loads get, and nothing of the others. */
export function fedTo({ fit, names }: Plain<Fed>) {
  const { loads } = settledLoads(fit, {})
  return loads
    .filter(({ name }) => names.includes(name))
    .map(({ name, atV, powerW, ratedSharePercent }) => ({ name, atV, powerW, ratedSharePercent }))
}

/** A circuit as it feeds some loads most, and in which position of its switches. */
export interface Hottest {
  readonly fit: CircuitFit
  readonly position: number
  /** Whether every other load is off. */
  readonly othersOff: boolean
}

/** Which loads are on, and which of them are asked about. */
export interface Asked {
  readonly names: readonly string[]
  readonly of: readonly string[]
}

/**
 * The circuit, in one of several positions of its switches, as it feeds these loads most at the upper end of its bounds, which is what
 * is judged. Null where it is the first as it stands.
 */
export function hottestFit(positions: readonly [CircuitFit, ...CircuitFit[]], { names, of }: Asked): Hottest | null {
  const [first] = positions
  const alone = positions.length === 1 && first.others.length === 0
  const highestW = (fit: CircuitFit) => (alone ? powerW(fit, of) : atMostW(fit, of))
  const others = positions.flatMap((fit, position): readonly Hottest[] => [
    ...(position === 0 ? [] : [{ fit, position, othersOff: false }]),
    ...othersOff(fit, names).map(off => ({ fit: off, position, othersOff: true }))
  ])
  if (others.length === 0) return null
  let [found, mostW]: [Hottest | null, number] = [null, highestW(first)]
  for (const other of others) {
    const otherW = highestW(other.fit)
    if (otherW > MORE * mostW) [found, mostW] = [other, otherW]
  }
  return found
}

/** What stands in series with a load is on with it. */
function withPassed({ loads }: CircuitFit, names: readonly string[]): ReadonlySet<string> {
  const passed = loads.flatMap(({ name, way }) => (names.includes(name) && way !== null ? way.passes.map(({ load }) => load) : []))
  return new Set([...names, ...passed])
}

/** Where there are any. Nothing of what protects it is asked about. */
function othersOff(fit: CircuitFit, names: readonly string[]): readonly CircuitFit[] {
  const kept = withPassed(fit, names)
  if (fit.loads.every(({ name }) => kept.has(name))) return []
  const loads = fit.loads.map(load =>
    kept.has(load.name) ? load : { ...load, takes: { by: 'resistance' as const, resistanceOhm: OFF_OHM } }
  )
  return [{ ...fit, loads, protectors: [], switches: [], shorts: [], groundPoints: [] }]
}

/** At the nominal, or at whichever corner of the bounds it is most; a corner without an answer counts for nothing here. */
function atMostW(fit: CircuitFit, names: readonly string[]): number {
  const corners = cornersOf(fit).map(corner => answered(() => powerW(atEnds(fit, corner), names)) ?? 0)
  return Math.max(powerW(fit, names), ...corners)
}

/** Of all of them together, at the nominal. */
function powerW(fit: CircuitFit, names: readonly string[]): number {
  return nominalOf({ fit, names }, fedTo).reduce((sum, load) => sum + load.powerW.value, 0)
}
