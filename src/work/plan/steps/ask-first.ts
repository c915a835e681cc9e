import { silently } from '../../../formula/working.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { insertFor } from '../../../trade/thread/insert.ts'
import { mayLeak } from '../../behind/behind-the-metal.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { ofNumber, ofResult, withBand } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'
import { castingFirst } from './chips.ts'

/** What no sum answers: asked before anything is cut. */
export const askFirst: StepsOf = judged => [
  behind(judged.job),
  approval(judged.job['ask-first']),
  ...judged.holes.flatMap(hole => castingFirst(hole, judged) ?? []),
  ...judged.holes.map(insertOf),
  ...drawer(judged.job['ask-first'])
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

/** What each thread would need if it were lost: a casting has no second chance but an insert. */
function insertOf({ place, part: { thread }, result }: HoleInWork): Step {
  const { majorMm, wallLeastMm } = silently(() => insertFor(thread))
  const left = ofResult(result('hole.wall-left'))
  const tooThin = left !== null && (left.low ?? left.value) < wallLeastMm
  const wall = left === null ? 'measure what is there' : `${withBand(left)} is there`
  return step(
    'ask first',
    place,
    `settle the way back, a wire thread insert for ${thread.name}: beside the thread of ${thingName(place)} it needs this much wall; ${wall}`,
    {
      figure: ofNumber('wallLeastMm', `least wall for an insert for ${thread.name}`, wallLeastMm, 'depth-up'),
      caution: `its hole is ${showNumber(majorMm, 'depth-up')} mm wide: ${tooThin ? 'this wall does not allow that, a thread that is lost has no way back' : 'where the wall does not allow that, do not start'}`,
      blank: `insert for ${thread.name}`,
      source: 'wire-insert'
    }
  )
}

/** The way back stands before the first cut. */
function drawer({ 'way-back': back }: AskFirst): readonly Step[] {
  return back === null ? [] : [step('ask first', '', `have the way back in the drawer: insert ${back.insert}`)]
}
