import type { Step } from '../../../report/plan/plan.ts'
import { mayLeak } from '../../behind/behind-the-metal.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { type StepsOf, step } from '../step.ts'
import { castingFirst } from './chips.ts'
import { wayBack } from './way-back.ts'

/** What no sum answers: asked before anything is cut. */
export const askFirst: StepsOf = judged => [
  behind(judged.job),
  approval(judged.job['ask-first']),
  ...judged.holes.flatMap(hole => castingFirst(hole, judged) ?? []),
  ...(wayBack(judged) ?? [])
]

type AskFirst = JudgedJob['job']['ask-first']

function behind(job: JudgedJob['job']): Step {
  const what = job['ask-first']['behind-the-metal']
  if (what === null)
    return step('ask first', '', 'find out what is behind the metal: fuel, oil, coolant, vacuum, pressure, a wire, or nothing', {
      blank: 'behind the metal',
      caution: 'not known is no reason to drill'
    })
  const less = 'air under pressure, or what a tank held before it was emptied, is not nothing: then the job has to say so. '
  return step('ask first', '', `make sure of what is behind the metal: ${what}`, {
    caution: `${mayLeak(job) ? '' : less}where the drawing and the machine differ, believe the machine and ask`
  })
}

function approval({ approval }: AskFirst): Step {
  const defers = "the maker's instructions, local codes and licensed practice go before this plan"
  return approval === null
    ? step('ask first', '', 'ask who must approve the change, and on what paper', { blank: 'approved by, on what paper', caution: defers })
    : step('ask first', '', `have the approval in hand: ${approval}`, { caution: defers })
}
