import type { Plain } from '../formula/given.ts'
import { makeA } from '../trade/circuit/switch-inrush.ts'
import type { CircuitFit, FittedLoad } from './circuit.ts'

type Loads = Plain<CircuitFit>['loads']

/** A load as it is switched on. */
export interface SwitchedOn {
  readonly name: string
  readonly kind: FittedLoad['kind']
  readonly steadyA: number
  /** Null where nobody knows what it takes cold. */
  readonly inrush: Plain<FittedLoad['inrush']>
}

/** Loads that are switched on together. Of loads in series each counts for its share, as one current flows through all of them. */
export function switchedOn(loads: Loads, names: readonly string[], currentsA: ReadonlyMap<string, number>): readonly SwitchedOn[] {
  return loads
    .filter(({ name }) => names.includes(name))
    .map(({ name, kind, inrush, way }) => ({ name, kind, inrush, steadyA: Math.abs(currentsA.get(name)!) / (way?.passes.length ?? 1) }))
}

/** Those of which nobody knows what they take cold. */
export function unknownCold(loads: readonly SwitchedOn[]): readonly string[] {
  return loads.flatMap(({ name, inrush }) => (inrush === null ? [name] : []))
}

/** Those that are taken as plain resistances, though nobody said that they are. */
export function assumedCold(loads: readonly SwitchedOn[]): readonly string[] {
  return loads.flatMap(({ name, inrush }) => (inrush?.basis === 'assumed' ? [name] : []))
}

/** All of them cold at once: each for itself. Null where there is none, or one is not known. */
export function coldStart(loads: readonly SwitchedOn[]) {
  const known = loads.flatMap(({ steadyA, inrush }) => (inrush === null ? [] : [{ steadyA, ...inrush }]))
  if (known.length === 0 || known.length < loads.length) return null
  const currentA = known.reduce((sum, one) => sum + makeA({ currentA: one.steadyA, coldRatio: one.times }), 0)
  return { currentA, lastsS: Math.max(...known.map(({ lastsS }) => lastsS ?? 0)) }
}
