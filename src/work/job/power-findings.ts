import type { Bounded } from '../../formula/bounds.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { Finding } from '../../rules/finding.ts'
import { aboveRating } from '../../rules/heater/above-rating.ts'
import { weak } from '../../rules/heater/weak.ts'
import type { Unsure } from '../../rules/missing.ts'
import { asked } from '../../rules/rule.ts'
import { none } from '../../rules/switch/none.ts'
import { staysFed } from '../../trade/circuit/switched-by.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import type { JobLoad } from './circuit-wiring.ts'
import { onTogether, switchRuns } from './on-together.ts'
import { steadyOf } from './steady-of.ts'

type LoadBounds = CircuitJudged['bounds']['loads'][number]

/** Whether enough power arrives and not too much, and whether it can be taken off. */
export function powerFindings(judged: CircuitJudged, load: JobLoad, bounds: LoadBounds, unsure: Unsure | null): readonly Finding[] {
  const steady = steadyOf(judged.circuit)
  const leastPowerW = leastPowerOf(judged.job, load)
  return [
    ...(load.heater === null && leastPowerW === null ? [] : [asked(weak, { powerW: bounds.powerW, leastPowerW, ...steady, unsure })]),
    ...(bounds.ratedSharePercent === null
      ? []
      : [asked(aboveRating, { ...highestShare(judged, load, bounds.ratedSharePercent), ...steady })]),
    ...(heats(load) ? [asked(none, { load: loadName(load), switchedBy: switchedBy(judged, loadName(load)) })] : [])
  ]
}

function leastPowerOf({ holes, parts }: Job, { heater, 'least-power': own }: JobLoad): number | null {
  const least = heater === null ? own : parts[holes[heater]!.takes]!['least-power']
  return least?.high ?? null
}

/** Up to the higher of its two ends: with every load on, and with every other one off. */
function highestShare({ circuit, guards, highest }: CircuitJudged, load: JobLoad, on: Bounded) {
  const off = highest(onTogether(circuit, guards, load)).find(({ name }) => name === loadName(load))?.ratedSharePercent
  if (!off || off.high <= on.high) return { ratedSharePercent: on, othersOff: false }
  return { ratedSharePercent: { ...off, low: Math.min(on.low, off.low) }, othersOff: true }
}

/** A heater, and what is drawn like one; a lamp, a motor or electronics has a switch of its own. */
function heats({ heater, kind, voltage, resistance }: JobLoad): boolean {
  return heater !== null || ((kind ?? 'resistive') === 'resistive' && (voltage !== null || resistance !== null))
}

/** What stands in series with a load; else what takes the power off together, each beside the other. */
function switchedBy({ circuit, guards: { wiring, guarding } }: CircuitJudged, name: string): readonly string[] {
  const runs = switchRuns(circuit)
  const open = runs.map(({ id }) => id)
  if (staysFed(wiring, name, open)) return []
  const inSeries = runs.filter(({ id }) => guarding.get(id)!.loads.includes(name))
  const beside = runs.filter(({ id }) =>
    staysFed(
      wiring,
      name,
      open.filter(other => other !== id)
    )
  )
  return (inSeries.length > 0 ? inSeries : beside).flatMap(({ items }) => items)
}
