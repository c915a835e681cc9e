import type { Job } from '../../../job/read-job.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { testGas } from '../../../rules/leak/test-gas.ts'
import { mayLeak } from '../../behind/behind-the-metal.ts'
import { testMedium } from '../../behind/test-medium.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { type StepsOf, step } from '../step.ts'
import { A_LEAK, heldText, pressureOf } from './leak-test.ts'

const source = 'practice'

/** With a gas, its own too, or with water that is not the machine's own: before anything is filled up, and before the battery is on. */
export const pressureTest: StepsOf = ({ job, answer }) => {
  const test = job['ask-first']['leak-test']
  if (test === null) return mayLeak(job) ? [NAMED_NOWHERE] : undefined
  const medium = testMedium(test.medium, job['ask-first'])
  return medium === 'own' ? undefined : medium === 'water' ? water(test) : gas(test, isRefused(answer))
}

function isRefused({ findings }: JudgedJob['answer']): boolean {
  return findings.some(({ rule, verdict }) => rule === testGas.id && verdict === 'fail')
}

const NAMED_NOWHERE = step(
  'close',
  '',
  "test for leaks with the medium and the pressure of the maker's manual: the job names none; its own fluid waits until it is filled",
  {
    caution: `gas, or water that is not its own: now, not after filling; never oxygen; where fuel or its vapour is or was inside, inert gas alone. ${A_LEAK}`,
    blank: 'medium and pressure',
    source
  }
)

type Test = NonNullable<Job['ask-first']['leak-test']>

function water(test: Test): readonly Step[] {
  return [
    step('close', '', 'shut off or unhook what does not stand the pressure of the test, and let all air out as the water goes in', {
      caution: 'air that is left in stores the pressure: what lets go then flies',
      source
    }),
    step(
      'close',
      '',
      `test for leaks with ${test.medium} at this pressure${heldText(test)}: dry all round, and the pressure does not fall`,
      {
        figure: pressureOf(test),
        caution: A_LEAK,
        blank: 'leak test',
        source
      }
    ),
    step('close', '', 'let the pressure off, let the water out, and dry what it has wetted before anything is filled up', { source })
  ]
}

function gas(test: Test, refused: boolean): readonly Step[] {
  return [
    step(
      'close',
      '',
      "before gas goes in: a regulator, a relief valve set just above the test, and the maker's word that all of it stands that",
      {
        caution:
          'gas under pressure stores what it takes in: a plug that lets go flies. Goggles, out of its line, and no more pressure than asked',
        source
      }
    ),
    refused ? withAnother(test) : withGas(test),
    step('close', '', 'let the pressure off slowly, out of doors or with air enough, and see the gauge at nought', {
      caution:
        'an inert gas takes the air to breathe away; one that burns, or may not be let out, is taken back instead; nothing is undone while there is pressure',
      source
    })
  ]
}

const BUBBLES = 'the pressure does not fall, no bubble in soap solution'

function withGas(test: Test): Step {
  return step('close', '', `test for leaks with ${test.medium} at this pressure${heldText(test)}: ${BUBBLES}`, {
    figure: pressureOf(test),
    caution: `where fuel or its vapour is or was inside, never air; oxygen never and nowhere: an inert gas, and the maker's instructions. One that burns, or that nobody may breathe or let out, waits: an inert gas first, then whoever is licensed for it. ${A_LEAK}`,
    blank: 'leak test',
    source
  })
}

/** What the job names fails: it is not ordered, and what may be taken is. */
function withAnother(test: Test): Step {
  return step('close', '', `test for leaks with nitrogen, or as the maker has it, at this pressure${heldText(test)}: ${BUBBLES}`, {
    figure: pressureOf(test),
    caution: `never with ${test.medium}, as the job has it. What burns and is to be tested with itself waits for an inert gas first, then for whoever is licensed for it. ${A_LEAK}`,
    blank: 'leak test, and with what',
    source
  })
}
