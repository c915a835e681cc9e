import type { Bounded } from '../../formula/bounds.ts'
import type { ResultFacts } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts, METAL_BELOW } from '../../trade/hole/depth.ts'
import type { WallNeeds } from '../../trade/hole/wall.ts'
import { atLeast, doubted, doubtsOf, figure, type Limit, neverFails, notJudged } from '../judge.ts'
import { openBehind } from '../open-behind.ts'
import type { Judged, Rule } from '../rule.ts'
import { thinnestFloor } from '../thinnest-floor.ts'

interface Subject {
  readonly metalBelowMm: Bounded | null
  readonly metalLeftMm: Bounded | null
  readonly wallLeftMm: Bounded | null
  readonly wallNeeds: Needs
  readonly majorMm: number
  /** A least floor that the job gives itself. */
  readonly leastFloor: Limit | null
}

type Needs = Pick<WallNeeds, 'heightMm' | 'insertMm'>

/** No standard gives a least floor; the trade leaves it no thinner than the wall beside the hole, and asks no more of it than the thread is wide. A wall that is thin itself is no measure. */
export const metalBelowThin: Rule<Subject> = {
  id: 'hole/metal-below-thin',
  question:
    'is the floor, below the drill and below the old bottom, no thinner than a wall may be, and as thick as the wall beside the thread or as the thread is wide?',
  why: 'The floor must stand pressure, heat and the push of a drill; a thin one cracks later.',
  change: 'set the stop higher, or give a least floor of your own with its reason as limits.metal-below',
  source: SOURCES.practice,
  judge: subject => {
    const { metalBelowMm, metalLeftMm } = subject
    if (metalBelowMm === null || metalLeftMm === null)
      return notJudged('casting.metal-below', 'measure the wall with an ultrasonic gauge, by a drawing, or from behind')
    // A floor that is or may be open fails whatever the limit.
    if (metalBelowMm.low < 0) return openBehind(metalBelowMm)!
    const floorMm = metalLeftMm.low < 0 ? metalLeftMm : thinnestFloor(metalLeftMm, metalBelowMm)
    return floorMm === metalBelowMm
      ? asItIs(judgedFloor({ floorMm, facts: METAL_BELOW }, subject))
      : judgedFloor({ floorMm, facts }, subject)
  }
}

/** What lies there, and what it is called. */
interface Floor {
  readonly floorMm: Bounded
  readonly facts: ResultFacts
}

function asItIs(judged: Judged): Judged {
  return judged.verdict === 'not-judged' ? judged : { ...judged, change: THIN_AS_IT_IS }
}

/** Below a limit of the job, or else below what any wall must have, it fails; thinner than what the trade asks is told. */
function judgedFloor(floor: Floor, { wallLeftMm, wallNeeds, majorMm, leastFloor }: Subject): Judged {
  if (leastFloor !== null) return againstOwn(floor, leastFloor, wallNeeds)
  const { insertMm } = wallNeeds
  const { floorMm, facts: floorFacts } = floor
  if (floorMm.low < insertMm) return atLeast(floorFacts, floorMm, leastOfAll(wallLeftMm, insertMm))
  const limit = askedOf(floorMm, wallLeftMm, { insertMm, majorMm })
  return limit === null
    ? notJudged('casting.wall', 'measure from the hole to the nearest face with a calliper')
    : neverFails(atLeast(floorFacts, floorMm, limit))
}

function againstOwn({ floorMm, facts: floorFacts }: Floor, leastFloor: Limit, { heightMm }: Needs): Judged {
  const judged = atLeast(floorFacts, floorMm, { ...leastFloor, value: Math.max(0, leastFloor.value) })
  return leastFloor.value < heightMm ? doubted(judged, [NO_LIMIT]) : judged
}

const NO_LIMIT = 'so thin a limit, less than the thread is deep, says nothing of a floor: ask whoever gave it'

const THIN_AS_IT_IS =
  'no stop makes it thicker: ask the maker of the casting, give a least floor of your own with its reason as limits.metal-below, or take another place'

/** This much is asked of a floor whatever is beside the hole. */
function leastOfAll(wallLeftMm: Bounded | null, value: number): Limit {
  return { value, reason: `as beside a thread with an insert, ${whateverIsBeside(wallLeftMm, value)}` }
}

function whateverIsBeside(wallLeftMm: Bounded | null, leastMm: number): string {
  if (wallLeftMm === null) return 'whatever the wall beside the hole is, which is not given'
  if (wallLeftMm.high < leastMm) return `as ${tooThin(wallLeftMm)}`
  return 'the least that any wall must have'
}

function tooThin(wallLeftMm: Bounded): string {
  return `${named(wallLeftMm)}, ${figure(wallLeftMm.high, facts)}, is too thin to be the measure`
}

function named({ low, high }: Bounded): string {
  return `the wall left beside the thread${low < high ? ' at its thickest' : ''}`
}

interface Asks extends Pick<Needs, 'insertMm'>, Pick<Subject, 'majorMm'> {}

/** The wall at its thickest: that is the most it can ask of the floor. With the wall unknown, the most that any can ask. */
function askedOf({ low }: Bounded, wallLeftMm: Bounded | null, { insertMm, majorMm }: Asks): Limit | null {
  const most = { value: majorMm, reason: `as thick as the thread is wide: more is asked of no floor, ${MORE}` }
  if (wallLeftMm === null) return low < majorMm ? null : most
  if (wallLeftMm.high > majorMm) return most
  const reason = wallLeftMm.high < insertMm ? `as beside a thread with an insert; ${tooThin(wallLeftMm)}` : named(wallLeftMm)
  const doubts = doubtsOf(wallLeftMm)
  return { value: Math.max(wallLeftMm.high, insertMm), reason, ...(doubts.length === 0 ? {} : { assumed: doubts.join('; ') }) }
}

const MORE = 'common practice, no published source'
