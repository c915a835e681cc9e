import { heatedHot } from '../../fitting/heated-circuit.ts'
import { type HotFit, hotFit, steppedFit, type WarmFit, warmFit, windowFit } from '../../fitting/warm-fit.ts'
import { type BoundsOf, boundsOf, exactly } from '../../formula/bounds.ts'
import { plainOf } from '../../formula/given.ts'
import { recalled } from '../../formula/memory.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'
import { resultOf } from '../../report/result.ts'
import { resultsBy } from '../../report/result-map.ts'
import { WARM_RULES } from '../../rules/list.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { asked, type SubjectOf } from '../../rules/rule.ts'
import { settledMetal } from '../../rules/settled-metal.ts'
import { AS_SETTLED } from '../../trade/heat/cautions.ts'
import { steppedTimeS } from '../../trade/heat/stepped-time.ts'
import { HEAT_TEST_RESULTS } from '../results/heat-test-results.ts'
import { HOT_RESULTS, WARMED_RESULTS, WINDOW_RESULTS } from '../results/warmed-results.ts'
import { fittedTest, testBounds } from './block-of.ts'
import { NO_HUMIDITY } from './cold-air-of.ts'
import { type Heated, withCircuit } from './heated-circuit-of.ts'
import { type FedLoads, heatersOf } from './heaters-of.ts'
import type { JudgedThing } from './judged-thing.ts'
import { coldTree, hotTree, NO_TARGET, type WarmGiven, type WarmJob, windowTree } from './warm-trees.ts'
import { warmedCautions } from './warmed-cautions.ts'
import { withIce } from './with-ice.ts'

/** What the rules are asked about. */
type WarmSubject = SubjectOf<(typeof WARM_RULES)[number]>

export type Warmed = BoundsOf<ReturnType<typeof warmFit>>
type Hot = BoundsOf<ReturnType<typeof hotFit>> | { readonly beyondC: number }

export interface JudgedWarm extends JudgedThing {
  /** The casting warmed in the coldest air, for whoever asks whether it stays dry. */
  readonly warmed: Warmed | Missing
}

/** A job's warm-up in the coldest air that moves, and in the hottest that stands. */
export function judgeWarm(job: WarmJob, loads: FedLoads, heated: Heated | null): JudgedWarm {
  const heaters = heatersOf(job, loads)
  const test = fittedTest(job.warm)
  const tried = isMissing(heaters)
    ? { warmed: heaters, hot: heaters, window: heaters, cautions: [], steppedS: null }
    : worked({ job, heaters, test }, heated)
  const { warmed, hot, window, cautions, steppedS } = tried
  const subject = subjectOf(job, tried)
  return {
    warmed,
    results: [
      ...(isMissing(warmed) ? [] : resultsBy(WARMED_RESULTS, warmed)),
      ...(steppedS === null ? [] : [resultOf('warm.time-to-target.stepped', steppedTimeS, steppedS)]),
      ...('hottestC' in hot ? resultsBy(HOT_RESULTS, hot) : []),
      ...(isMissing(window) ? [] : resultsBy(WINDOW_RESULTS, window)),
      ...(test === null ? [] : resultsBy(HEAT_TEST_RESULTS, testBounds(test)))
    ],
    findings: WARM_RULES.map(rule => asked(rule, subject)),
    cautions
  }
}

interface Worked {
  readonly warmed: Warmed | Missing
  readonly hot: Hot | Missing
  readonly window: BoundsOf<ReturnType<typeof windowFit>> | Missing
  readonly steppedS: number | null
}

function worked(given: WarmGiven, heated: Heated | null): Worked & { readonly cautions: readonly string[] } {
  const [cold, hot] = [coldTree(given), hotTree(given)]
  const window = windowTree(given, cold, hot)
  const warmed = isMissing(cold) ? cold : (heated?.warmed ?? boundsOf(cold, withIce(cold.air, warmFit)))
  return {
    warmed,
    hot: isMissing(hot) ? hot : hotOrBeyond(() => hotOf(given, hot, heated)),
    window: isMissing(window) ? window : boundsOf(window, withIce(window.air, windowFit)),
    steppedS: isMissing(cold) ? null : steppedOf(cold),
    cautions:
      isMissing(cold) || isMissing(warmed) ? [] : [...warmedCautions(given.job, cold, warmed), ...(heated === null ? [] : [AS_SETTLED])]
  }
}

/** Once, at the nominal. */
function steppedOf(cold: WarmFit): number | null {
  const calculation = withIce(cold.air, steppedFit)
  return recalled({ tree: cold, calculation, draws: 0 }, () => silently(() => calculation(plainOf(cold).plain)))
}

/** Circuit and casting as one there too, where they are so in the cold. */
function hotOf({ job, heaters }: WarmGiven, hot: HotFit, heated: Heated | null) {
  const tree = heated === null ? null : withCircuit(job, heaters, hot)
  return tree === null ? boundsOf(hot, hotFit) : boundsOf(tree, heatedHot)
}

/** Hotter than films are worked out for is an answer: too hot. */
function hotOrBeyond(hot: () => BoundsOf<ReturnType<typeof hotFit>>): Hot {
  try {
    return hot()
  } catch (error) {
    if (error instanceof OutsideRange && error.input === 'surfaceC') return { beyondC: error.greatest }
    throw error
  }
}

const NOTHING = { holdMarginK: null, cutMarginK: null, timeToTargetS: null }

/** A thermostat that may open below the target keeps the metal from it. */
function cutShort(cutMarginK: Warmed['cutMarginK']): boolean {
  return cutMarginK !== null && cutMarginK.low <= 0
}

function subjectOf({ warm: { target, within, limit, thermostat, material } }: WarmJob, { warmed, hot, window }: Worked): WarmSubject {
  const none = target === null ? NO_TARGET : NO_HUMIDITY
  const { holdMarginK, cutMarginK, timeToTargetS } = isMissing(warmed) ? NOTHING : warmed
  return {
    hold: isMissing(warmed) ? warmed : holdMarginK === null ? none : { holdMarginK, cutMarginK },
    reach: isMissing(warmed)
      ? warmed
      : timeToTargetS === null
        ? none
        : { timeToTargetS: cutShort(cutMarginK) ? exactly(Number.POSITIVE_INFINITY) : timeToTargetS },
    within: within === null ? null : { value: within.low },
    hot,
    metal: isMissing(warmed) ? warmed : settledMetal(material, isMissing(hot) ? [warmed] : [warmed, hot], thermostat?.off.high ?? null),
    limit: limit === null ? null : { value: limit.greatest.low, reason: limit.reason },
    window,
    thermostatC: thermostat?.off.high ?? null
  }
}
