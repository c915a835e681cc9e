import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { castingMarginN as facts } from '../../trade/joint/strip.ts'
import { atLeast, doubted, type Lack, missing } from '../judge.ts'
import type { Rule } from '../rule.ts'
import { type ThreadPlace, threadDoubts } from '../thread-doubts.ts'
import { LEAST_FACTOR, OF_BARS } from '../typical-strength.ts'

interface Subject extends ThreadPlace {
  readonly castingMarginN: Bounded | null
  readonly internalStripLoadN: Bounded | null
  readonly preloadN: Bounded | null
  /** Whether the strength is that of cast bars of the alloy, and not of this casting. */
  readonly typical: boolean
  readonly lacks: Lack | null
}

/** Whether the thread in the casting holds what the torque pulls. */
export const castingStrips: Rule<Subject> = {
  id: 'joint/casting-strips',
  question: 'does the thread in the casting hold more than the torque can pull?',
  why: 'A stripped casting has no second chance but an insert.',
  change: 'engage more thread, ask the maker for a lower torque, or tap for an insert at once',
  source: SOURCES['h28-2b'],
  judge: ({ castingMarginN, internalStripLoadN, preloadN, typical, lacks, ...place }) => {
    if (castingMarginN === null || internalStripLoadN === null || preloadN === null) return missing(lacks)
    const judged = atLeast(facts, castingMarginN, { value: 0 })
    const shareFactor = place.wall?.shareFactor ?? 1
    const [holdsN, pullN] = [shareFactor * internalStripLoadN.low, preloadN.high]
    return doubted(judged, [
      ...(holdsN < pullN
        ? [`a wall so thin may leave ${Math.floor(100 * shareFactor)} % of that strength, which is less than the pull`]
        : []),
      ...(typical && holdsN < LEAST_FACTOR * pullN ? [`less than ${LEAST_FACTOR} times the pull, ${OF_BARS}`] : []),
      ...threadDoubts(place)
    ])
  }
}
