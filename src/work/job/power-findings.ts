import type { Bounded } from '../../formula/bounds.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { Finding } from '../../rules/finding.ts'
import { aboveRating } from '../../rules/heater/above-rating.ts'
import { weak } from '../../rules/heater/weak.ts'
import { type Unsure, unsureOf } from '../../rules/missing.ts'
import { asked } from '../../rules/rule.ts'
import { none } from '../../rules/switch/none.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import type { JobLoad } from './circuit-wiring.ts'
import { feeding, inPosition, loadIn } from './in-position.ts'
import { onTogether } from './on-together.ts'
import { steadyOf } from './steady-of.ts'
import { switchedOff } from './switched-off.ts'
import { unfedLoad } from './unfed-loads.ts'

/** Whether enough power arrives and not too much, and whether it can be taken off. */
export function powerFindings(judged: CircuitJudged, load: JobLoad, unsure: Unsure | null): readonly Finding[] {
  return [
    ...weakFinding(judged, load, unsure),
    ...ratingFinding(judged, load),
    ...(heats(load) ? [asked(none, { load: loadName(load), ...switchedOff(judged, loadName(load)) })] : [])
  ]
}

/** In the position of the switches in which least arrives while it is on. */
function weakFinding(judged: CircuitJudged, load: JobLoad, unsure: Unsure | null): readonly Finding[] {
  const leastPowerW = leastPowerOf(judged.job, load)
  if (load.heater === null && leastPowerW === null) return []
  const { least } = feeding(judged, loadName(load))
  const { powerW } = loadIn(least, loadName(load))
  return [inPosition(asked(weak, { powerW, leastPowerW, ...steadyOf(judged.circuit), unsure }), least)]
}

function leastPowerOf({ holes, parts }: Job, { heater, 'least-power': own }: JobLoad): number | null {
  const least = heater === null ? own : parts[holes[heater]!.takes]!['least-power']
  return least?.high ?? null
}

/** Up to the higher of its two ends: in the first position in which it is fed, and where it gets most. */
function ratingFinding(judged: CircuitJudged, load: JobLoad): readonly Finding[] {
  const { circuit, guards, highest } = judged
  const { first } = feeding(judged, loadName(load))
  const on = loadIn(first, loadName(load)).ratedSharePercent
  if (on === null) return []
  const unfed = unfedLoad(judged, loadName(load))
  if (unfed !== null) return [asked({ ...aboveRating, judge: () => unsureOf(unfed) }, null)]
  const most = highest(onTogether(circuit, guards, load), first, loadName(load))
  const off = most?.loads.find(({ name }) => name === loadName(load))?.ratedSharePercent
  if (most === null || !off || off.high <= on.high) return [inPosition(shareFinding(on, false), first)]
  return [inPosition(shareFinding({ ...off, low: Math.min(on.low, off.low) }, most.othersOff), most.position)]

  function shareFinding(ratedSharePercent: Bounded, othersOff: boolean): Finding {
    return asked(aboveRating, { ratedSharePercent, othersOff, ...steadyOf(circuit) })
  }
}

/** A heater, and what is drawn like one; a lamp, a motor or electronics has a switch of its own. */
function heats({ heater, kind, voltage, resistance }: JobLoad): boolean {
  return heater !== null || ((kind ?? 'resistive') === 'resistive' && (voltage !== null || resistance !== null))
}
