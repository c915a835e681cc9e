import type { Job } from '../../../job/read-job.ts'
import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber, showSpread } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { straightNm } from '../../../trade/joint/torque-wrench.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofGiven } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { isTerminal } from '../terminal.ts'

/** The card of the part on the wrench of the bench. */
export const torquing: HoleStepsOf = (hole, { job }) => [
  ...(isWired(hole) ? [step('fit', hole.place, 'lay the lead the way it will run')] : []),
  ...terminalOf(hole).map(what => step('fit', hole.place, `hold the ${what} still: it must not turn with the part`)),
  tighten(hole, job.tools.wrench),
  ...(isWired(hole)
    ? [
        step('fit', hole.place, 'look where the connector points: turn it on only inside the band of the card', {
          caution: 'never back off to meet a direction; another thickness under the shoulder is a new sum'
        })
      ]
    : []),
  step('fit', hole.place, 'let it stand a minute, then pull once more to the same setting: it must not move', {
    caution: 'a part that moves on: stop, take it out, look at both threads'
  })
]

function terminalOf({ hole }: HoleInWork): readonly string[] {
  return [...new Set(hole['under-shoulder'].flatMap(({ what }) => (isTerminal(what) ? [what] : [])))]
}

function isWired({ part }: HoleInWork): boolean {
  return part.kind !== 'plug'
}

type Wrench = Job['tools']['wrench']

function tighten({ place, part }: HoleInWork, wrench: Wrench): Step {
  if (part.torque === null)
    return step('fit', place, "tighten to the maker's card: none is given", {
      blank: 'torque, and from where',
      caution: 'not by feel, and not by the size of the thread: the casting holds less than a nut'
    })
  const { card } = part.torque
  const figure = ofGiven('cardNm', 'torque on the card', card)
  const pounds = showNumber(inUnit('torque', 'lbf·in', card.value), 'torque')
  return step('fit', place, `tighten in one slow pull (${pounds} lbf·in): ${wrenchText(card.value, wrench)}`, {
    figure,
    caution: 'set the wrench to this only without an adapter: with one, work the setting out',
    blank: 'torque as left'
  })
}

function wrenchText(cardNm: number, wrench: Wrench): string {
  if (wrench === null) return 'write down the wrench and its range'
  const { range, accuracy } = wrench
  const reach = `wrench ${showSpread(range.low, range.high, 'torque')} N·m`
  if (accuracy === null) return reach
  const [least, most] = [-accuracy.high, accuracy.high].map(errorPercent => straightNm({ settingNm: cardNm, errorPercent }))
  return `${reach}, so ${showSpread(least!, most!, 'torque')} N·m at the part`
}
