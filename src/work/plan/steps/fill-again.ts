import type { Job } from '../../../job/read-job.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { isLiquid, isTakenBack, mayDrain, mayLeak, namesOpenWater } from '../../behind/behind-the-metal.ts'
import { type StepsOf, step } from '../step.ts'
import { A_LEAK } from './leak-test.ts'

/** What was drained or shut out comes back, and is looked at, before the battery is on. */
export const fillAgain: StepsOf = ({ job }) => {
  if (!mayLeak(job)) return undefined
  return [...(mayDrain(job) ? [...filled(job), LOOK] : []), ...(namesOpenWater(job) ? [LET_IN] : [])]
}

function filled(job: Job): readonly Step[] {
  if (!isTakenBack(job)) return [FILL_UP]
  return isLiquid(job) ? [FILLED_BY, FILL_UP] : [FILLED_BY]
}

const FILL_UP = step('close', '', "fill up again what was drained or lowered, and look at its level as the machine's manual says", {
  caution: 'never run the machine without it. Where it burns: every spill wiped up, and its smell gone, before the battery is on'
})

const FILLED_BY = step('close', '', 'have what was taken back filled in again by whoever is licensed for it', {
  caution: 'never run the machine without it, and never with more than its plate says'
})

const LOOK = step('close', '', 'look all round the part, now that it is full: dry; where it is a gas, no bubble in soap solution', {
  caution: `the battery stays off until it has stayed dry. ${A_LEAK}`
})

const LET_IN = step(
  'close',
  '',
  'let the water back slowly, the seacock opened a little or the boat still in its slings, and look at the part',
  {
    caution: 'a hand on the seacock, or the slings under load, until it has stayed dry'
  }
)
