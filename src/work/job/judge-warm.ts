import { loadName } from '../../job/circuit-names.ts'
import { resultOf } from '../../report/result.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Finding } from '../../rules/finding.ts'
import type { Held } from '../../rules/held-metal.ts'
import { WARM_RULES } from '../../rules/list.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { asked } from '../../rules/rule.ts'
import type { SteadyBus } from '../../rules/steady-bus.ts'
import { neverReaches } from '../../rules/warm/never-reaches.ts'
import { thermostatNotWired } from '../../rules/warm/thermostat-not-wired.ts'
import { tooSlow } from '../../rules/warm/too-slow.ts'
import { steppedTimeS } from '../../trade/heat/stepped-time.ts'
import { HEAT_TEST_RESULTS } from '../results/heat-test-results.ts'
import { HOT_RESULTS, WARMED_RESULTS, WINDOW_RESULTS } from '../results/warmed-results.ts'
import { fittedTest, type JobWarm, testBounds } from './block-of.ts'
import type { CastingFeed } from './casting-feed.ts'
import { heatersOf, type WarmingHeater } from './heaters-of.ts'
import { heldHot } from './held-hot.ts'
import { heldAboveDew } from './held-of.ts'
import { inPosition } from './in-position.ts'
import type { JudgedThing } from './judged-thing.ts'
import { steadyOf } from './steady-of.ts'
import { otherAirAdvice } from './tested-otherwise.ts'
import { type Cutting, countedOffC, cuttingOf, holding } from './thermostat-of.ts'
import { asMissing, warmSubject } from './warm-subject.ts'
import type { WarmJob } from './warm-trees.ts'
import { isWarmed, type Warmed, type Worked, worked } from './warm-worked.ts'

export interface JudgedWarm extends JudgedThing {
  /** The casting warmed in the coldest air, for whoever asks whether it stays dry. */
  readonly warmed: Warmed | Missing
  /** Ends of the bus that it hangs on and nobody told. */
  readonly steady: SteadyBus
  /** What a thermostat holds it at, against dew and frost point. */
  readonly held: Held
  /** How the switches stand while it is warmed, where not as they are drawn. */
  readonly state: string | null
}

/** A job's warm-up in the coldest air that moves, and in the hottest that stands. */
export function judgeWarm(job: WarmJob, feed: CastingFeed): JudgedWarm {
  const heated = feed.heated()
  const heaters = feed.unfed ?? heatersOf(job, feed.loads)
  const test = fittedTest(job.warm)
  const tried: Worked = isMissing(heaters)
    ? { warmed: heaters, hot: heaters, window: heaters, cautions: [], steppedS: null }
    : worked({ job, heaters, test }, heated, feed.hottest)
  const { warmed, hot, window, cautions, steppedS } = tried
  const cutting = cuttingOf(job, isMissing(heaters) ? [] : heaters)
  return {
    warmed: isWarmed(warmed) ? warmed : asMissing(warmed),
    steady: isMissing(heaters) ? {} : steadyFor(job, heaters),
    held: isWarmed(warmed) ? heldAboveDew(warmed, holding(job, cutting)) : null,
    state: feed.states.warmed,
    results: [
      ...(isWarmed(warmed) ? resultsBy(WARMED_RESULTS, warmed) : []),
      ...(steppedS === null ? [] : [resultOf('warm.time-to-target.stepped', steppedTimeS, steppedS)]),
      ...('hottestC' in hot ? resultsBy(HOT_RESULTS, hot) : []),
      ...(isMissing(window) ? [] : resultsBy(WINDOW_RESULTS, window)),
      ...(test === null ? [] : resultsBy(HEAT_TEST_RESULTS, testBounds(test)))
    ],
    findings: findingsOf(job, tried, {
      heaters: isMissing(heaters) ? [] : heaters,
      cutting,
      states: feed.states,
      coupled: heated === null ? null : feed.hottest
    }).map(one => tested(one, job.warm['heat-test'], test?.remedy ?? null)),
    cautions
  }
}

interface Fed extends Pick<CastingFeed, 'states'> {
  readonly heaters: readonly WarmingHeater[]
  readonly cutting: Cutting
  /** The circuit at its hottest, where it and the casting are solved as one. */
  readonly coupled: CastingFeed['hottest']
}

function findingsOf(job: WarmJob, tried: Worked, { heaters, cutting, states, coupled }: Fed): readonly Finding[] {
  const offC = countedOffC(job, cutting)
  const subject = warmSubject(job, tried, {
    offC,
    heldC: heldHot({ job, heaters }, offC, coupled),
    holding: holding(job, cutting),
    partTime: partTimeOf(job, heaters),
    steady: steadyFor(job, heaters)
  })
  const cut = job.warm.thermostat === null || heaters.length === 0 ? [] : [asked(thermostatNotWired, { uncut: cutting.uncut })]
  return [...WARM_RULES.map(rule => inState(asked(rule, subject), states)), ...cut]
}

/** What hangs on readings that contradict each other, or on a test that contradicts area and film, is mended there first. */
function tested(finding: Finding, test: JobWarm['heat-test'], doubt: string | null): Finding {
  if (test === null) return finding
  const hangs = (field: string) => finding.assumes?.some(path => path.includes('heat-test') && path.includes(field)) ?? false
  const isOther = hangs('air-was')
  const remedies = [...(doubt !== null && (isOther || hangs('readings')) ? [doubt] : []), ...(isOther ? [otherAirAdvice(test)] : [])]
  if (remedies.length === 0) return finding
  const remedy = remedies.join('; ')
  const isOver = finding.verdict === 'fail' || (finding.margin ?? 0) < 0
  return { ...finding, change: isOver ? `${remedy}; then ${finding.change}` : remedy }
}

/** Whether it gets warm enough is asked where it is meant to be warmed, the rest where it gets hottest. That a thermostat is fitted hangs on no switch. */
function inState(finding: Finding, { warmed, hottest }: CastingFeed['states']): Finding {
  const { rule, verdict, value } = finding
  if (verdict === 'pass' && value === null) return finding
  return inPosition(finding, { state: rule === neverReaches.id || rule === tooSlow.id ? warmed : hottest })
}

/** A bus says nothing of a heater that no circuit feeds. */
function steadyFor({ circuit }: WarmJob, heaters: readonly WarmingHeater[]): SteadyBus {
  return circuit !== null && heaters.some(({ atV }) => atV !== null) ? steadyOf(circuit) : {}
}

function partTimeOf({ circuit }: WarmJob, heaters: readonly WarmingHeater[]): readonly string[] {
  const loads = circuit?.loads.filter(({ on }) => on.low < 100).map(loadName) ?? []
  return heaters.flatMap(({ name }) => (loads.includes(name) ? [name] : []))
}
