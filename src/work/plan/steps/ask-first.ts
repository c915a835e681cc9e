import type { Step } from '../../../report/plan/plan.ts'
import { type StepsOf, step } from '../step.ts'

/** What no sum answers: asked before anything is cut. */
export const askFirst: StepsOf = ({ job }) => [behind(job['ask-first']), approval(job['ask-first']), ...wayBack(job)]

type AskFirst = Parameters<StepsOf>[0]['job']['ask-first']

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
function wayBack({ 'ask-first': { 'way-back': back }, holes, parts }: Parameters<StepsOf>[0]['job']): readonly Step[] {
  if (back !== null) return [step('ask first', '', `have the way back in the drawer: insert ${back.insert}`)]
  const threads = [...new Set(Object.values(holes).map(({ takes }) => parts[takes]!.thread.name))]
  return threads.map(thread =>
    step('ask first', '', `settle the way back: a repair insert for ${thread}, and whether the wall allows its larger hole`, {
      blank: `insert for ${thread}`
    })
  )
}
