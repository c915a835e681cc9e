import { SOURCES } from '../../../formula/source.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { isAir, isLiquid, isTakenBack, mayDrain, mayLeak, namesOpenWater } from '../../behind/behind-the-metal.ts'
import { type StepsOf, step } from '../step.ts'

/** What is behind the metal is out of the way before it is opened; what an emptied place may hold is vapour. */
export const empty: StepsOf = ({ job }) => {
  if (isAir(job)) return [LET_OFF]
  if (!mayLeak(job)) return undefined
  if (isTakenBack(job)) return [TAKEN_BACK, CLEARED, ...(isLiquid(job) ? [LET_OUT, AIR] : [])]
  return [...(namesOpenWater(job) ? [SHUT_OUT] : []), ...(mayDrain(job) ? [isLiquid(job) ? LET_OUT : LET_OUT_OF_WHAT] : []), AIR]
}

const LET_OFF = step(
  'make ready',
  '',
  'let off what pressure the air behind the metal may have, and see a gauge or an open cock tell nought',
  {
    caution: 'a reservoir keeps its pressure with the machine off'
  }
)

const LET_OUT = step('make ready', '', 'let the pressure off, and drain or lower what is behind the metal')

/** A word may leave open whether it is a gas. */
const LET_OUT_OF_WHAT: Step = {
  ...LET_OUT,
  caution: 'a gas that burns, poisons or may not go into the air is not let out: whoever is licensed for it takes it back'
}

const TAKEN_BACK = step('make ready', '', 'have what is behind the metal taken back, and its pressure off, by whoever is licensed for it', {
  caution: 'it is not let out: it burns, poisons, takes the air to breathe away or may not go into the air; heavy gas lies in pits',
  source: SOURCES.practice.id
})

const CLEARED = step('make ready', '', 'wait for their word that it is empty, flushed and clear: the nose does not tell', {
  caution: 'no spark, no flame, no electric drill near it before that',
  blank: 'cleared by',
  source: SOURCES.practice.id
})

const SHUT_OUT = step('make ready', '', 'haul the boat out, or close the seacock and see that nothing runs in', {
  caution: 'below the water line nothing is drained: an open hole there sinks the boat'
})

/** Said of everything that is not nothing: whether it burns is not for a word in a file to tell. */
const AIR: Step = step(
  'make ready',
  '',
  'flush and air what was emptied, until nothing of it is left to smell; ask who may say that it is clear',
  {
    caution:
      'where it burns, or its vapour does: no spark, no flame, no electric drill near it. Emptied of fuel, it is worse than full: vapour and air explode',
    source: SOURCES.practice.id
  }
)
