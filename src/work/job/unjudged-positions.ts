import { NoAnswer } from '../../formula/no-answer.ts'
import { type Finding, noAnswer } from '../../rules/finding.ts'
import { joiningRuns } from '../../trade/circuit/joining-runs.ts'
import { shortingRuns } from '../../trade/circuit/shorting-runs.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'
import { switchNames } from './position-name.ts'

/** A position of the switches that shorts a source is never judged: it is named, as nobody drew what keeps the switches from it. */
export function shortingFinding(circuit: JobCircuit, switching: Switching): readonly Finding[] {
  const shorting = shortingRuns(switching)
  return shorting === null ? [] : [caution(`with ${namesIn(circuit, shorting)} on at once a source is shorted: that is not judged`, APART)]
}

const APART = 'see that they cannot be on at once: one change-over switch that breaks before it makes, or relays that lock each other out'

/** Nor is one that puts sources together which are apart as drawn, as a selector turned to both; what no position closes is told where it stands. */
export function joiningFinding(circuit: JobCircuit, switching: Switching, never: readonly string[]): readonly Finding[] {
  const joining = joiningRuns(switching, never)
  if (joining === null || joining.some(id => never.includes(id))) return []
  const says = `with ${namesIn(circuit, joining)} on at once sources are together that are apart as drawn: that is not judged`
  return [caution(says, TOGETHER)]
}

const TOGETHER =
  'draw them so and judge that, too, where they can be on at once, as by a selector turned to both; else see that they cannot be'

function namesIn(circuit: JobCircuit, ids: readonly string[]): string {
  return namedRuns(circuit)
    .flatMap(({ id, run: { through } }) => (ids.includes(id) ? switchNames(through) : []))
    .join(', ')
}

function caution(says: string, change: string): Finding {
  return { ...noAnswer('circuit', new NoAnswer(says, change)), verdict: 'caution' }
}
