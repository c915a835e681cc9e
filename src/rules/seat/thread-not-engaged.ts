import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { ENGAGED as facts } from '../../trade/hole/engaged.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly engagedMm: Bounded | null
  readonly pitchMm: number
}

/** Whether the part takes hold at all: less than one turn is no thread. How much it needs is another question. */
export const threadNotEngaged: Rule<Subject> = {
  id: 'seat/thread-not-engaged',
  question: 'does the thread of the part reach into the thread of the hole by one turn at least?',
  why: 'Under a thick stack a short thread hangs by nothing, however much room is left below it.',
  change: 'take a thinner stack or a part with a longer thread, or tap deeper',
  source: SOURCES.geometry,
  judge: ({ engagedMm, pitchMm }) =>
    engagedMm === null
      ? notJudged('thread-length', 'measure from the shoulder to the last full thread of the part')
      : atLeast(facts, engagedMm, { value: pitchMm, reason: 'one turn' })
}
