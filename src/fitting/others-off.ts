import { nominalOf } from '../formula/bounds.ts'
import { Given, type Plain } from '../formula/given.ts'
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

/** The circuit as it feeds these loads most: with every other load off. Null where it is that as it stands. */
export function hottestFit(fit: CircuitFit, names: readonly string[]): CircuitFit | null {
  const kept = withPassed(fit, names)
  if (fit.loads.every(({ name }) => kept.has(name))) return null
  const off = othersOff(fit, kept)
  return powerW(off, names) > MORE * powerW(fit, names) ? off : null
}

/** What stands in series with a load is on with it. */
function withPassed({ loads }: CircuitFit, names: readonly string[]): ReadonlySet<string> {
  const passed = loads.flatMap(({ name, way }) => (names.includes(name) && way !== null ? way.passes.map(({ load }) => load) : []))
  return new Set([...names, ...passed])
}

/** Nothing of what protects it is asked about. */
function othersOff(fit: CircuitFit, kept: ReadonlySet<string>): CircuitFit {
  const loads = fit.loads.map(load =>
    kept.has(load.name) ? load : { ...load, takes: { by: 'resistance' as const, resistanceOhm: OFF_OHM } }
  )
  return { ...fit, loads, protectors: [], switches: [], shorts: [], groundPoints: [] }
}

/** Of all of them together, at the nominal. */
function powerW(fit: CircuitFit, names: readonly string[]): number {
  return nominalOf({ fit, names }, fedTo).reduce((sum, load) => sum + load.powerW.value, 0)
}
