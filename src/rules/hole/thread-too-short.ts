import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { needMarginMm as facts } from '../../trade/hole/tapping.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

/** Whether the tap that reaches deepest leaves the full thread that is wanted. */
export const threadTooShort: Rule<{ readonly best: { readonly needMarginMm: Bounded | null } | null }> = {
  id: 'hole/thread-too-short',
  question: 'does the tap that reaches deepest leave the full thread wanted?',
  why: 'Too little full thread strips, or the part jams before its shoulder lands.',
  change: 'use a tap with a shorter chamfer, a closer stop, or a part with less thread',
  source: SOURCES['tap-depth'],
  judge: ({ best }) =>
    best === null || best.needMarginMm === null
      ? notJudged('need', 'the full thread wanted: the thread of the part less the stack under its shoulder')
      : atLeast(facts, best.needMarginMm, { value: 0 })
}
