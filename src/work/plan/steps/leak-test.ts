import type { Job } from '../../../job/read-job.ts'
import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { ofGiven, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'
import { isAfloat, mayLeak } from './behind-the-metal.ts'

/** Where something is behind the metal, it is tested before the machine is trusted. */
export const leakTest: StepsOf = ({ job }) => {
  if (!mayLeak(job)) return undefined
  return [isAfloat(job) ? LET_IN : FILL_UP, ...tested(job)]
}

const FILL_UP = step('first run', '', "fill up again what was drained or lowered, and look at its level as the machine's manual says", {
  caution: 'never run the machine without it'
})

const LET_IN = step(
  'first run',
  '',
  'let the water back slowly, the seacock opened a little or the boat still in its slings, and look at the part',
  {
    caution: 'a hand on the seacock, or the slings under load, until it has stayed dry'
  }
)

function tested(job: Job): readonly Step[] {
  const test = job['ask-first']['leak-test']
  const caution = 'a leak: stop, let the pressure off; more torque is no cure'
  if (test === null)
    return [
      step('first run', '', "test for leaks with the medium and the pressure of the maker's manual: the job names none", {
        caution,
        blank: 'medium and pressure'
      })
    ]
  const { medium, pressure, hold } = test
  const bar = `${showNumber(inUnit('pressure', 'bar', pressure.value), 'plain')} bar`
  const held = hold === null ? '' : `, held for ${showNumber(hold.value / 60, 'plain')} min`
  return [
    step('first run', '', `test for leaks with ${medium} at this pressure${held}: dry all round, and the pressure stays`, {
      figure: written(ofGiven('testPa', 'pressure of the leak test', pressure), bar),
      caution,
      blank: 'leak test'
    })
  ]
}
