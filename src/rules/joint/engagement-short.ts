import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { engagementSpareMm as facts } from '../../trade/joint/strip.ts'
import { atLeast, doubted, type Lack, missing, neverFails } from '../judge.ts'
import type { Rule } from '../rule.ts'
import { type ThreadPlace, threadDoubts } from '../thread-doubts.ts'

interface Subject extends ThreadPlace {
  readonly engagementSpareMm: Bounded | null
  readonly lacks: Lack | null
}

/** Whether the part would break before the casting strips: worth saying, no fail, since the torque is judged by itself. */
export const engagementShort: Rule<Subject> = {
  id: 'joint/engagement-short',
  question: 'is so much thread engaged that the part would break before the casting strips?',
  why: 'Whoever overtightens it one day should find a broken part, not a casting without a thread.',
  change: 'engage more thread: tap deeper, a thinner stack, a part with a longer thread; or mark the torque on the part',
  source: SOURCES['h28-2b'],
  judge: ({ engagementSpareMm, lacks, ...place }) =>
    engagementSpareMm === null ? missing(lacks) : doubted(neverFails(atLeast(facts, engagementSpareMm, { value: 0 })), threadDoubts(place))
}
