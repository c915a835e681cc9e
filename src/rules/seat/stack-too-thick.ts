import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { engagedMarginMm as facts } from '../../trade/hole/engaged.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

/** Whether enough thread is left in the hole under the stack. */
export const stackTooThick: Rule<{ readonly engagedMarginMm: Bounded | null }> = {
  id: 'seat/stack-too-thick',
  question: 'are as many full threads engaged as are wanted?',
  why: 'Every tenth under the shoulder is a tenth of thread less in the casting, until it strips.',
  change: 'take a thinner stack or a part with a longer thread, or tap deeper where the hole ends first',
  source: SOURCES.geometry,
  judge: ({ engagedMarginMm }) =>
    engagedMarginMm === null
      ? notJudged('need', 'the full threads to be engaged, as "fettle joint" works them out')
      : atLeast(facts, engagedMarginMm, { value: 0 })
}
