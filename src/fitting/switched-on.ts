import type { Plain } from '../formula/given.ts'
import { inrushSteps } from '../trade/circuit/inrush-steps.ts'
import { ownRatio } from '../trade/circuit/switch-inrush.ts'
import type { CircuitFit, FittedLoad } from './circuit.ts'
import type { atLoad } from './circuit-loads.ts'
import { followedOhm, ratedOhm } from './rated-ohm.ts'

type Loads = Plain<CircuitFit>['loads']
/** Of every load, what it takes as it is fed. */
export type Fed = ReadonlyMap<string, Pick<ReturnType<typeof atLoad>, 'currentA' | 'resistanceOhm'>>

/** A load as it is switched on. */
export interface SwitchedOn {
  readonly name: string
  readonly kind: FittedLoad['kind']
  readonly steadyA: number
  /** Null where nobody knows what it takes cold. What was told is no less than what its resistance tells. */
  readonly inrush: Plain<FittedLoad['inrush']>
  /** So many times the steady current is what its resistance lets through at the start; null where it tells nothing. */
  readonly ownRatio: number | null
}

/** Loads that are switched on together. Of loads in series each counts for its share, as one current flows through all of them. */
export function switchedOn(loads: Loads, names: readonly string[], fed: Fed): readonly SwitchedOn[] {
  return loads
    .filter(({ name }) => names.includes(name))
    .map(load => {
      const { currentA, resistanceOhm } = fed.get(load.name)!
      const own = resistanceOhm === null ? null : ratioOf(load, resistanceOhm)
      const { name, kind, inrush, way } = load
      const told = inrush === null || own === null ? inrush : { ...inrush, times: Math.max(inrush.times, own) }
      return { name, kind, inrush: told, ownRatio: own, steadyA: Math.abs(currentA) / (way?.passes.length ?? 1) }
    })
}

/** Its resistance as it has settled over that at the start. */
function ratioOf({ takes, startC }: Loads[number], settledOhm: number): number | null {
  if (takes.by !== 'rated' || takes.follows === null) return null
  return ownRatio({ settledOhm, startOhm: followedOhm(ratedOhm(takes, undefined), takes.follows, startC) })
}

/** Those of which nobody knows what they take cold. */
export function unknownCold(loads: readonly SwitchedOn[]): readonly string[] {
  return loads.flatMap(({ name, inrush }) => (inrush === null ? [name] : []))
}

/** Those that are taken as plain resistances, though nobody said that they are. */
export function assumedCold(loads: readonly SwitchedOn[]): readonly string[] {
  return loads.flatMap(({ name, inrush }) => (inrush?.basis === 'assumed' ? [name] : []))
}

/** All of them cold at once, step by step as one after the other settles, the greatest current first. Null where there is none, or one is not known. */
export function coldStart(loads: readonly SwitchedOn[]) {
  const known = loads.flatMap(({ steadyA, inrush }) => (inrush === null ? [] : [{ steadyA, ...inrush }]))
  if (known.length === 0 || known.length < loads.length) return null
  const steps = inrushSteps(known)
  return { currentA: steps[0]!.currentA, steps }
}
