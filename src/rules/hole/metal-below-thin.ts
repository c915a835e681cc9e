import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts, METAL_BELOW } from '../../trade/hole/depth.ts'
import type { WallNeeds } from '../../trade/hole/wall.ts'
import { atLeast, doubted, doubtsOf, figure, type Limit, notJudged } from '../judge.ts'
import { openBehind } from '../open-behind.ts'
import type { Rule } from '../rule.ts'
import { thinnestFloor } from '../thinnest-floor.ts'

interface Subject {
  readonly metalBelowMm: Bounded | null
  readonly metalLeftMm: Bounded | null
  readonly wallLeftMm: Bounded | null
  readonly wallNeeds: Needs
  /** A least floor that the job gives itself. */
  readonly leastFloor: Limit | null
}

type Needs = Pick<WallNeeds, 'heightMm' | 'insertMm'>

/** No standard gives a least floor; the trade leaves it no thinner than the wall beside the hole. A wall that is thin itself is no measure. */
export const metalBelowThin: Rule<Subject> = {
  id: 'hole/metal-below-thin',
  question:
    'is the floor, below the drill and below the old bottom, as thick as the wall beside the thread, and no thinner than a wall may be?',
  why: 'The floor must stand pressure, heat and the push of a drill; a thin one cracks later.',
  change: 'set the stop higher, or give a least floor of your own with its reason under limits',
  source: SOURCES.practice,
  judge: ({ metalBelowMm, metalLeftMm, wallLeftMm, wallNeeds, leastFloor }) => {
    if (metalBelowMm === null || metalLeftMm === null)
      return notJudged('casting.metal-below', 'measure the wall with an ultrasonic gauge, by a drawing, or from behind')
    const floorMm = thinnestFloor(metalLeftMm, metalBelowMm)
    const known = leastFloor ?? wallAsLimit(wallLeftMm, wallNeeds)
    // A floor that is or may be open fails whatever the limit.
    if (metalBelowMm.low < 0) return openBehind(metalBelowMm)!
    if (metalLeftMm.low < 0) return atLeast(facts, metalLeftMm, { ...known, value: Math.max(0, known?.value ?? 0) })
    const limit = known ?? leastOfAll(floorMm, wallNeeds)
    if (limit === null) return notJudged('casting.wall', 'measure from the hole to the nearest face with a calliper')
    const judged =
      floorMm === metalBelowMm ? { ...atLeast(METAL_BELOW, floorMm, limit), change: THIN_AS_IT_IS } : atLeast(facts, floorMm, limit)
    return leastFloor !== null && leastFloor.value < wallNeeds.heightMm ? doubted(judged, [NO_LIMIT]) : judged
  }
}

const NO_LIMIT = 'so thin a limit, less than the thread is deep, says nothing of a floor: ask whoever gave it'

const THIN_AS_IT_IS = 'no stop makes it thicker: ask the maker of the casting, or take another place'

/** The wall at its thickest: that is the most it can ask of the floor; and never less than a wall must have for anything to be said of it. */
function wallAsLimit(wallLeftMm: Bounded | null, { insertMm }: Needs): Limit | null {
  if (wallLeftMm === null) return null
  const { low, high } = wallLeftMm
  const doubts = doubtsOf(wallLeftMm)
  const thick = `the wall left beside the thread${low < high ? ' at its thickest' : ''}`
  const reason =
    high < insertMm ? `as beside a thread with an insert; ${thick}, ${figure(high, facts)}, is too thin to be the measure` : thick
  return { value: Math.max(high, insertMm), reason, ...(doubts.length === 0 ? {} : { assumed: doubts.join('; ') }) }
}

/** With the wall unknown this much is still asked of a floor; one that has it waits for the wall. */
function leastOfAll({ low }: Bounded, { insertMm: value }: Needs): Limit | null {
  if (low >= value) return null
  return { value, reason: 'as beside a thread with an insert, whatever the wall beside the hole is, which is not given' }
}
