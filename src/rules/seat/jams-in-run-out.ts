import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { runOutGapMm } from '../../trade/hole/gap.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

const facts = { ...runOutGapMm, says: 'room before the thread runs out, with the stack' }

/** Whether the shoulder lands, on its stack, before the thread in the hole runs out. */
export const jamsInRunOut: Rule<{ readonly runOut: { readonly withStackMm: Bounded } | null }> = {
  id: 'seat/jams-in-run-out',
  question: 'does the shoulder land on its stack before the thread runs out?',
  why: 'A part that jams in the run-out wedges the casting open while the wrench still reads a good torque.',
  change: 'tap deeper, put a thicker stack under the shoulder, or use a part with a shorter thread',
  source: SOURCES.geometry,
  judge: ({ runOut }) =>
    runOut === null
      ? notJudged('thread-length', 'measure from the shoulder to the last full thread of the part')
      : atLeast(facts, runOut.withStackMm, { value: 0 })
}
