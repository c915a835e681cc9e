import type { Job } from '../../../job/read-job.ts'
import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Figure, Step } from '../../../report/plan/plan.ts'
import { mayLeak } from '../../behind/behind-the-metal.ts'
import { testMedium } from '../../behind/test-medium.ts'
import { ofGiven, written } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

export const A_LEAK = 'a leak: stop, let the pressure off; more torque is no cure'

/** With the machine's own liquid, once it is full: whether it burns is not for a word in a file to tell, so the battery is still off. */
export const leakTest: StepsOf = ({ job }) => {
  const test = job['ask-first']['leak-test']
  return test !== null && testMedium(test.medium, job['ask-first']) === 'own' ? [ownFluid(test)] : undefined
}

/** What only a running machine warms up and puts under pressure. */
export const lookAgain: StepsOf = ({ job }) => (mayLeak(job) ? [WARM] : undefined)

const WARM = step('first run', '', 'look all round the part as soon as the machine runs, and again once it is warm: dry', {
  caution: A_LEAK
})

type Test = NonNullable<Job['ask-first']['leak-test']>

function ownFluid(test: Test): Step {
  return step('close', '', `test for leaks with ${test.medium} at this pressure${heldText(test)}: dry all round, and the pressure stays`, {
    figure: pressureOf(test),
    caution: `the pressure from outside, by a hand pump, no pump of the machine: the battery stays off until it has stayed dry. ${A_LEAK}`,
    blank: 'leak test'
  })
}

export function heldText({ hold }: Test): string {
  return hold === null ? '' : `, held for ${showNumber(hold.value / 60, 'plain')} min`
}

export function pressureOf({ pressure }: Test): Figure {
  const bar = `${showNumber(inUnit('pressure', 'bar', pressure.value), 'plain')} bar`
  return written(ofGiven('testPa', 'pressure of the leak test', pressure), bar)
}
