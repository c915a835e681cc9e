import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { engagementSpareMm as facts } from '../../trade/joint/strip.ts'
import { atLeast, doubted, type Lack, missing, neverFails } from '../judge.ts'
import type { Rule } from '../rule.ts'
import { type ThreadPlace, threadDoubts } from '../thread-doubts.ts'
import { LEAST_FACTOR, OF_BARS, STRONGEST_FACTOR } from '../typical-strength.ts'

interface Subject extends ThreadPlace {
  readonly engagementSpareMm: Bounded | null
  readonly engagementRequiredMm: Bounded | null
  /** Whether the strength of the casting is that of cast bars of the alloy. */
  readonly typical: boolean
  /** Whether the strength of the part is its least, as a class or a sheet promises it. */
  readonly leastOfPart: boolean
  readonly lacks: Lack | null
}

const STRONGER = `and the part may be ${STRONGEST_FACTOR} times as strong as its least (VDI 2230, memory)`

/** Whether the part would break before the casting strips: worth saying, no fail, since the torque is judged by itself. */
export const engagementShort: Rule<Subject> = {
  id: 'joint/engagement-short',
  question: 'is so much thread engaged that the part would break before the casting strips?',
  why: 'Whoever overtightens it one day should find a broken part, not a casting without a thread.',
  change: 'engage more thread: tap deeper, a thinner stack, a part with a longer thread; or mark the torque on the part',
  source: SOURCES['h28-2b'],
  judge: ({ engagementSpareMm, engagementRequiredMm, lacks, typical, leastOfPart, ...place }) => {
    if (engagementSpareMm === null || engagementRequiredMm === null) return missing(lacks)
    const times = (typical ? LEAST_FACTOR : 1) * (leastOfPart ? STRONGEST_FACTOR : 1)
    const isWithin = engagementSpareMm.low < (times - 1) * engagementRequiredMm.high
    const why = [...(typical ? [OF_BARS] : []), ...(leastOfPart ? [STRONGER] : [])].join(', ')
    return doubted(neverFails(atLeast(facts, engagementSpareMm, { value: 0 })), [
      ...(isWithin ? [`less than ${Number(times.toFixed(2))} times what that takes, ${why}`] : []),
      ...threadDoubts(place)
    ])
  }
}
