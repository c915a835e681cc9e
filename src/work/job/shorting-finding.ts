import { NoAnswer } from '../../formula/no-answer.ts'
import { type Finding, noAnswer } from '../../rules/finding.ts'
import { shortingRuns } from '../../trade/circuit/shorting-runs.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'
import { switchNames } from './position-name.ts'

/** A position of the switches that shorts a source is never judged: it is named, as nobody drew what keeps the switches from it. */
export function shortingFinding(circuit: JobCircuit, switching: Switching): readonly Finding[] {
  const shorting = shortingRuns(switching)
  if (shorting === null) return []
  const names = namedRuns(circuit).flatMap(({ id, run: { through } }) => (shorting.includes(id) ? switchNames(through) : []))
  const says = `with ${names.join(', ')} on at once a source is shorted: that is not judged`
  const change =
    'see that they cannot be on at once: one change-over switch that breaks before it makes, or relays that lock each other out'
  return [{ ...noAnswer('circuit', new NoAnswer(says, change)), verdict: 'caution' }]
}
