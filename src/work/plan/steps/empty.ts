import { SOURCES } from '../../../formula/source.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { mayDrain, mayLeak, namesOpenWater } from '../../behind/behind-the-metal.ts'
import { type StepsOf, step } from '../step.ts'

/** What is behind the metal is out of the way before it is opened; what an emptied place may hold is vapour. */
export const empty: StepsOf = ({ job }) => {
  if (!mayLeak(job)) return undefined
  return [...(namesOpenWater(job) ? [SHUT_OUT] : []), ...(mayDrain(job) ? [LET_OUT] : []), AIR]
}

const LET_OUT = step('make ready', '', 'let the pressure off, and drain or lower what is behind the metal')

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
