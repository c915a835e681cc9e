import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts } from '../../trade/hole/depth.ts'
import { atLeast, doubtsOf, type Limit, notJudged } from '../judge.ts'
import { openBehind } from '../open-behind.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly metalBelowMm: Bounded | null
  readonly metalLeftMm: Bounded | null
  readonly wallLeftMm: Bounded | null
  /** A least floor that the job gives itself. */
  readonly leastFloor: Limit | null
}

/** No standard gives a least floor; the trade leaves it no thinner than the wall beside the hole. */
export const metalBelowThin: Rule<Subject> = {
  id: 'hole/metal-below-thin',
  question: 'is the floor left below the drill as thick as the wall beside the thread?',
  why: 'The floor must stand pressure, heat and the push of a drill; a thin one cracks later.',
  change: 'set the stop higher, or give a least floor of your own with its reason under limits',
  source: SOURCES.practice,
  judge: ({ metalBelowMm, metalLeftMm, wallLeftMm, leastFloor }) => {
    if (metalBelowMm === null || metalLeftMm === null)
      return notJudged('casting.metal-below', 'measure the wall with an ultrasonic gauge, by a drawing, or from behind')
    const limit = leastFloor ?? wallAsLimit(wallLeftMm)
    // A floor that is or may be open fails whatever the limit.
    if (metalBelowMm.low < 0) return openBehind(metalBelowMm)!
    if (metalLeftMm.low < 0) return atLeast(facts, metalLeftMm, { ...limit, value: Math.max(0, limit?.value ?? 0) })
    return limit === null
      ? notJudged('casting.wall', 'measure from the hole to the nearest face with a calliper')
      : atLeast(facts, metalLeftMm, limit)
  }
}

/** The wall at its thickest: that is the most it can ask of the floor. */
function wallAsLimit(wallLeftMm: Bounded | null): Limit | null {
  if (wallLeftMm === null) return null
  const { low, high } = wallLeftMm
  const doubts = doubtsOf(wallLeftMm)
  const reason = `the wall left beside the thread${low < high ? ' at its thickest' : ''}`
  return { value: high, reason, ...(doubts.length === 0 ? {} : { assumed: doubts.join('; ') }) }
}
