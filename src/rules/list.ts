import type { circuitFit } from '../fitting/circuit-fit.ts'
import type { holeFit } from '../fitting/hole-fit.ts'
import type { Bounded, BoundsOf } from '../formula/bounds.ts'
import type { Span } from '../quantity/parse-quantity.ts'
import { surfaceWet } from './dew/surface-wet.ts'
import { tooMuch } from './drop/too-much.ts'
import { aboveRating } from './heater/above-rating.ts'
import { weak } from './heater/weak.ts'
import { brokenThrough } from './hole/broken-through.ts'
import { drillOutsideLimits } from './hole/drill-outside-limits.ts'
import { metalBelowThin } from './hole/metal-below-thin.ts'
import { oldHoleTooLarge } from './hole/old-hole-too-large.ts'
import { threadTooShort } from './hole/thread-too-short.ts'
import { wallBroken } from './hole/wall-broken.ts'
import type { Limit } from './judge.ts'
import { change } from './mass/change.ts'
import { outsideLimits } from './mass/outside-limits.ts'
import type { Rule } from './rule.ts'
import { bottomsOnFloor } from './seat/bottoms-on-floor.ts'
import { jamsInRunOut } from './seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from './seat/jams-without-terminal.ts'
import { cardCondition } from './torque/card-condition.ts'
import { outsideWrenchRange } from './torque/outside-wrench-range.ts'
import { needsThermostat } from './warm/needs-thermostat.ts'
import { neverReaches } from './warm/never-reaches.ts'
import { tooHot } from './warm/too-hot.ts'
import { tooSlow } from './warm/too-slow.ts'

type Fitted = BoundsOf<ReturnType<typeof holeFit>>

/** What the rules of a hole, and of the part in it, are asked about. */
export type HoleSubject = Fitted['hole'] & {
  readonly runOut: NonNullable<Fitted['seat']>['runOut'] | null
  readonly floor: NonNullable<Fitted['seat']>['floor']
  readonly leastFloor: Limit | null
  readonly drillMm: Bounded
  readonly thread: string
  readonly minor: { readonly minMm: number; readonly maxMm: number }
  readonly cardThreads: 'dry' | 'lubricated' | null
  readonly threadsWith: string | null
  readonly settingNm: Bounded | null
  readonly tool: Span | null
}

/** What the rules of a load are asked about. */
export type LoadSubject = BoundsOf<ReturnType<typeof circuitFit>>['loads'][number] & {
  readonly leastPowerW: number | null
  readonly limit: (Limit & { readonly unit: '%' | 'V' }) | null
}

type SubjectOf<R> = R extends Rule<infer Subject> ? Subject : never

/** What the rules of a warm-up are asked about. */
export type WarmSubject = SubjectOf<typeof neverReaches> &
  SubjectOf<typeof tooSlow> &
  SubjectOf<typeof tooHot> &
  SubjectOf<typeof needsThermostat>

export type AirSubject = SubjectOf<typeof surfaceWet>
export type MassSubject = SubjectOf<typeof outsideLimits> & SubjectOf<typeof change>

export const HOLE_RULES: readonly Rule<HoleSubject>[] = [
  oldHoleTooLarge,
  drillOutsideLimits,
  metalBelowThin,
  wallBroken,
  threadTooShort,
  jamsInRunOut,
  bottomsOnFloor,
  jamsWithoutTerminal,
  cardCondition,
  outsideWrenchRange
]

export const LOAD_RULES: readonly Rule<LoadSubject>[] = [tooMuch, weak, aboveRating]

export const WARM_RULES: readonly Rule<WarmSubject>[] = [neverReaches, tooSlow, tooHot, needsThermostat]

export const AIR_RULES: readonly Rule<AirSubject>[] = [surfaceWet]

export const MASS_RULES: readonly Rule<MassSubject>[] = [outsideLimits, change]

/** Asked of a quick sum alone: a job is asked for a floor that is thick enough, which is more. */
const QUICK_RULES = [brokenThrough]

/** Every rule, whatever it is asked about. */
export const RULES: readonly Omit<Rule<never>, 'judge'>[] = [
  ...HOLE_RULES,
  ...LOAD_RULES,
  ...WARM_RULES,
  ...AIR_RULES,
  ...MASS_RULES,
  ...QUICK_RULES
]
