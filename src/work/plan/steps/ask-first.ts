import { silently } from '../../../formula/working.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { insertFor } from '../../../trade/thread/insert.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { ofNumber, ofResult } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'

/** What no sum answers: asked before anything is cut. */
export const askFirst: StepsOf = judged => {
  const ask = judged.job['ask-first']
  return [behind(ask), approval(ask), ...wayBack(judged)]
}

type AskFirst = JudgedJob['job']['ask-first']

function behind({ 'behind-the-metal': what }: AskFirst): Step {
  return what === null
    ? step('ask first', '', 'find out what is behind the metal: fuel, oil, coolant, vacuum, pressure, a wire, or nothing', {
        blank: 'behind the metal',
        caution: 'not known is no reason to drill'
      })
    : step('ask first', '', `make sure of what is behind the metal: ${what}`, {
        caution: 'where the drawing and the machine differ, believe the machine and ask'
      })
}

function approval({ approval }: AskFirst): Step {
  const defers = "the maker's instructions, local codes and licensed practice go before this plan"
  return approval === null
    ? step('ask first', '', 'ask who must approve the change, and on what paper', { blank: 'approved by, on what paper', caution: defers })
    : step('ask first', '', `have the approval in hand: ${approval}`, { caution: defers })
}

/** The way back stands before the first cut: a casting has no second chance but an insert. */
function wayBack({ job, holes }: JudgedJob): readonly Step[] {
  const back = job['ask-first']['way-back']
  if (back !== null) return [step('ask first', '', `have the way back in the drawer: insert ${back.insert}`)]
  return holes.map(({ place, part: { thread }, result }) => {
    const { majorMm, wallLeastMm } = silently(() => insertFor(thread))
    const left = ofResult(result('hole.wall-left'))
    const tooThin = left !== null && (left.low ?? left.value) < wallLeastMm
    const wall = left === null ? 'measure what is there' : `${left.text} is there`
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
  })
}
