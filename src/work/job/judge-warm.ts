import { loadName } from '../../job/circuit-names.ts'
import { resultOf } from '../../report/result.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Finding } from '../../rules/finding.ts'
import { WARM_RULES } from '../../rules/list.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { asked } from '../../rules/rule.ts'
import type { SteadyBus } from '../../rules/steady-bus.ts'
import { thermostatNotWired } from '../../rules/warm/thermostat-not-wired.ts'
import { steppedTimeS } from '../../trade/heat/stepped-time.ts'
import { HEAT_TEST_RESULTS } from '../results/heat-test-results.ts'
import { HOT_RESULTS, WARMED_RESULTS, WINDOW_RESULTS } from '../results/warmed-results.ts'
import { fittedTest, testBounds } from './block-of.ts'
import type { Heated } from './heated-circuit-of.ts'
import { type FedLoads, heatersOf, type WarmingHeater } from './heaters-of.ts'
import type { JudgedThing } from './judged-thing.ts'
import { steadyOf } from './steady-of.ts'
import { countedOffC, uncutHeaters } from './thermostat-of.ts'
import { asMissing, warmSubject } from './warm-subject.ts'
import type { WarmJob } from './warm-trees.ts'
import { isWarmed, type Warmed, type Worked, worked } from './warm-worked.ts'

export interface JudgedWarm extends JudgedThing {
  /** The casting warmed in the coldest air, for whoever asks whether it stays dry. */
  readonly warmed: Warmed | Missing
  /** Whether it hangs on a bus of which nobody told how low it gets. */
  readonly steadyBus: boolean
}

/** A job's warm-up in the coldest air that moves, and in the hottest that stands. */
export function judgeWarm(job: WarmJob, loads: FedLoads, heated: Heated | null): JudgedWarm {
  const heaters = heatersOf(job, loads)
  const test = fittedTest(job.warm)
  const tried: Worked = isMissing(heaters)
    ? { warmed: heaters, hot: heaters, window: heaters, cautions: [], steppedS: null }
    : worked({ job, heaters, test }, heated)
  const { warmed, hot, window, cautions, steppedS } = tried
  return {
    warmed: isWarmed(warmed) ? warmed : asMissing(warmed),
    steadyBus: !isMissing(heaters) && steadyFor(job, heaters).steadyBus === true,
    results: [
      ...(isWarmed(warmed) ? resultsBy(WARMED_RESULTS, warmed) : []),
      ...(steppedS === null ? [] : [resultOf('warm.time-to-target.stepped', steppedTimeS, steppedS)]),
      ...('hottestC' in hot ? resultsBy(HOT_RESULTS, hot) : []),
      ...(isMissing(window) ? [] : resultsBy(WINDOW_RESULTS, window)),
      ...(test === null ? [] : resultsBy(HEAT_TEST_RESULTS, testBounds(test)))
    ],
    findings: findingsOf(job, tried, isMissing(heaters) ? [] : heaters),
    cautions
  }
}

function findingsOf(job: WarmJob, tried: Worked, heaters: readonly WarmingHeater[]): readonly Finding[] {
  const uncut = job.warm.thermostat === null ? [] : uncutHeaters(job, heaters)
  const subject = warmSubject(job, tried, {
    offC: countedOffC(job, uncut),
    partTime: partTimeOf(job, heaters),
    steady: steadyFor(job, heaters)
  })
  const cut = job.warm.thermostat === null || heaters.length === 0 ? [] : [asked(thermostatNotWired, { uncut })]
  return [...WARM_RULES.map(rule => asked(rule, subject)), ...cut]
}

/** A bus says nothing of a heater that no circuit feeds. */
function steadyFor({ circuit }: WarmJob, heaters: readonly WarmingHeater[]): SteadyBus {
  return circuit !== null && heaters.some(({ atV }) => atV !== null) ? steadyOf(circuit) : {}
}

function partTimeOf({ circuit }: WarmJob, heaters: readonly WarmingHeater[]): readonly string[] {
  const loads = circuit?.loads.filter(({ on }) => on.low < 100).map(loadName) ?? []
  return heaters.flatMap(({ name }) => (loads.includes(name) ? [name] : []))
}
