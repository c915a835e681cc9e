import { type Bounded, exactly } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { cutShort } from '../../rules/held-metal.ts'
import type { WARM_RULES } from '../../rules/list.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { SubjectOf } from '../../rules/rule.ts'
import { type Settled, settledMetal } from '../../rules/settled-metal.ts'
import type { SteadyBus } from '../../rules/steady-bus.ts'
import { noPointOf } from './cold-air-of.ts'
import { heldAboveTarget } from './held-of.ts'
import type { Holding } from './thermostat-of.ts'
import { NO_TARGET, type WarmJob } from './warm-trees.ts'
import { type Beyond, isWarmed, type Worked } from './warm-worked.ts'

/** What the rules of a warm-up are asked about. */
type WarmSubject = SubjectOf<(typeof WARM_RULES)[number]>

export interface Switched {
  /** The metal at which a thermostat that counts takes the power off. */
  readonly offC: Given | null
  /** The hottest spot then. */
  readonly heldC: Bounded | null
  /** Whether a thermostat holds the metal in the cold. */
  readonly holding: Holding
  /** Heaters that are on for a part of the time. */
  readonly partTime: readonly string[]
  /** Ends of the bus that nobody told, where a circuit feeds them. */
  readonly steady: SteadyBus
}

export function warmSubject(job: WarmJob, worked: Worked, { offC, heldC, holding, partTime, steady }: Switched): WarmSubject {
  const { limit, within } = job.warm
  const thermostatC = offC?.high ?? null
  return {
    within: within === null ? null : { value: within.low },
    hot: isMissing(worked.hot) && 'beyondC' in worked.warmed ? worked.warmed : worked.hot,
    metal: metalOf(job, worked, thermostatC),
    limit: limit === null ? null : { value: limit.greatest.low, reason: limit.reason },
    window: worked.window,
    thermostatC,
    heldC,
    hotAirC: hotAirOf(job),
    uncounted: uncountedOf(job, worked),
    ...steady,
    ...inTheCold(job, worked, { partTime, holding })
  }
}

function hotAirOf({ surroundings }: WarmJob): number | null {
  return surroundings?.hot?.high ?? null
}

/** What takes heat away, is not told and is reckoned as nought where it gets hottest. */
function uncountedOf({ warm, surroundings }: WarmJob, { warmed, hot }: Worked): readonly string[] {
  const [hottestAir, found] = (surroundings?.hot ?? null) === null ? (['moving', warmed] as const) : (['still', hot] as const)
  const isMeasured = 'filmWPerM2K' in found && found.filmWPerM2K === null
  if (isMeasured || warm['heat-test']?.['air-was'] === hottestAir) return []
  return [...(warm.emissivity === null ? ['warm.emissivity'] : []), ...(warm.machine.assumed === undefined ? [] : ['warm.machine'])]
}

function inTheCold(
  { warm: { target }, surroundings }: WarmJob,
  { warmed }: Worked,
  { partTime, holding }: Pick<Switched, 'partTime' | 'holding'>
): Pick<WarmSubject, 'hold' | 'reach'> {
  if (!isWarmed(warmed)) return { hold: asMissing(warmed), reach: asMissing(warmed) }
  const { holdMarginK, timeToTargetS } = warmed
  const held = heldAboveTarget(warmed, holding)
  const none = target === null || surroundings === null ? NO_TARGET : noPointOf(surroundings)
  return {
    hold: holdMarginK === null ? none : { holdMarginK, held, partTime },
    reach:
      timeToTargetS === null ? none : { timeToTargetS: cutShort(held) ? exactly(Number.POSITIVE_INFINITY) : timeToTargetS, held, partTime }
  }
}

/** Where it gets hotter than films are worked out for, no question of the cold has an answer. */
export function asMissing(warmed: Beyond | Missing): Missing {
  if (!('beyondC' in warmed)) return warmed
  const measure = `the metal gets hotter than the ${warmed.beyondC} °C up to which a film is worked out: less power, or more surface`
  return { field: 'the warm-up', measure }
}

/** A thermostat cools nothing: in hotter air the metal gets as hot as the air. */
function metalOf(job: WarmJob, { warmed, hot }: Worked, thermostatC: number | null): WarmSubject['metal'] {
  if (isMissing(warmed)) return warmed
  const cold = isWarmed(warmed) ? { steadyC: atHottest(warmed.steadyC) } : warmed
  const settled: readonly Settled[] = isMissing(hot) ? [cold] : [cold, hot]
  return settledMetal(job.warm.material, settled, thermostatC === null ? null : Math.max(thermostatC, hotAirOf(job) ?? thermostatC))
}

/** It is hottest where nothing goes into the machine and nothing is radiated: a guess of either hangs on neither there. */
function atHottest(steadyC: Bounded): Bounded {
  return { ...steadyC, hangsOn: steadyC.hangsOn.filter(({ at: [block, field] }) => block !== 'warm' || !COOLING.includes(String(field))) }
}

const COOLING = ['emissivity', 'machine']
