import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { HAND_TAPPING_SOURCE, handTapping } from '../../../trade/hole/hand-tapping.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofNumber, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { type CutTap, tapsOf } from '../taps-of.ts'

/** Each tap in its turn, counted: a tap is stopped by its turns and not by feel. */
export const tapping: HoleStepsOf = hole => {
  const taps = tapsOf(hole)
  return taps.length === 0
    ? undefined
    : [fluid(hole), ...taps.flatMap((tap, i) => tapped(tap, hole, i === 0)), ...depth(taps.at(-1)!, hole)]
}

function fluid({ place, hole }: HoleInWork): Step {
  const { alloy } = hole.casting
  const ask = alloy === null ? 'ask what the casting is' : `this casting: ${alloy}`
  return step('tap', place, `put cutting fluid on the tap: light oil on aluminium and brass, oil on steel, none on grey iron (${ask})`, {
    source: HAND_TAPPING_SOURCE.id
  })
}

function tapped({ name, turns, chamferTurns }: CutTap, { place, part }: HoleInWork, first: boolean): readonly Step[] {
  const figure = ofResult(turns, 'turns-down', `turns, ${name} tap`)
  if (figure === null) return []
  if (figure.value <= 0) return [step('tap', place, `leave the ${name} tap: the hole is too shallow for any turn of it`)]
  const { forwardTurns, backTurns, clearTurns } = handTapping({ chamferTurns, majorMm: part.thread.majorMm })
  return [
    step('tap', place, `screw in the ${name} tap, ${part.thread.name}, so many turns and no more; count from its end level with the face`, {
      figure,
      caution: first ? 'start it square: look from two sides' : 'start it by hand in the thread that is there'
    }),
    step(
      'tap',
      place,
      `every so many turns, take the ${name} tap out and clear the chips; on the way ${turn(forwardTurns)} on, ${turn(backTurns)} back`,
      {
        figure: ofNumber('clearTurns', `clear the chips, ${name} tap`, clearTurns, 'turns'),
        caution: 'a tap that springs is about to break: back it off, clear, look',
        source: HAND_TAPPING_SOURCE.id
      }
    )
  ]
}

function turn(turns: number): string {
  return turns === 1 ? 'a turn' : `${showNumber(turns, 'plain')} turn`
}

function depth({ name, depth }: CutTap, { place }: HoleInWork): readonly Step[] {
  const figure = ofResult(depth, 'depth-down', `full thread after the ${name} tap`)
  if (figure === null || figure.value <= 0) return []
  return [step('tap', place, 'clean the hole dry, then measure the full thread below the face', { figure, blank: 'full thread' })]
}
