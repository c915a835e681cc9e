import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { type AlloyFamily, alloyFamily } from '../../../trade/circuit/terminal-ground.ts'
import { HAND_TAPPING_SOURCE, handTapping } from '../../../trade/hole/hand-tapping.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofNumber } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { type CutTap, tapsOf } from '../taps-of.ts'

/** Each tap in its turn, to a mark and counted: a tap is stopped by its depth and not by feel. */
export const tapping: HoleStepsOf = hole => {
  const taps = tapsOf(hole)
  return taps.length === 0
    ? undefined
    : [fluid(hole), ...taps.flatMap((tap, i) => tapped(tap, hole, i === 0)), ...depth(taps.at(-1)!, hole)]
}

const FLUIDS: Readonly<Record<AlloyFamily, string>> = {
  aluminium: 'light oil',
  zinc: 'light oil, a little',
  iron: 'none on grey iron, oil on steel',
  magnesium: 'none, or mineral oil; never one with water in it'
}

const EVERY_FLUID = 'light oil on aluminium, zinc and brass, oil on steel, none on grey iron, nothing with water on magnesium'

function fluid({ place, hole }: HoleInWork): Step {
  const { alloy } = hole.casting
  const family = alloy === null ? undefined : alloyFamily(alloy)
  const which = family === undefined ? `${EVERY_FLUID} (ask what it is)` : `${FLUIDS[family]} (${alloy})`
  return step('tap', place, `cutting fluid for the tap: ${which}`, {
    caution: family === 'magnesium' ? 'water makes burning chips worse, and wet chips give off a gas that burns' : undefined,
    source: HAND_TAPPING_SOURCE.id
  })
}

function tapped({ name, turns, end, chamferTurns }: CutTap, { place, part }: HoleInWork, first: boolean): readonly Step[] {
  if (turns === null || end === null) return []
  if (turns.value <= 0) return [step('tap', place, `leave the ${name} tap: the hole is too shallow for any turn of it`)]
  const { forwardTurns, backTurns, clearTurns } = handTapping({ chamferTurns, majorMm: part.thread.majorMm })
  return [
    step(
      'tap',
      place,
      `mark the shank of the ${name} tap, or note how much is to stand out: the smallest thread of its chamfer ends this far below the face`,
      { figure: end, caution: 'a front centre reaches further and is not counted' }
    ),
    step(
      'tap',
      place,
      `screw in the ${name} tap, ${part.thread.name}, to its mark; from its end level with the face these are the turns, and no more`,
      {
        figure: turns,
        caution: `turns that it dropped in before it bit are taken off. ${first ? 'Start it square: look from two sides' : 'Start it by hand in the thread that is there'}`
      }
    ),
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

function depth({ thread }: CutTap, { place }: HoleInWork): readonly Step[] {
  if (thread === null || thread.value <= 0) return []
  return [
    step('tap', place, 'clean the hole dry, then measure the full thread below the face: so much at least', {
      figure: thread,
      blank: 'full thread'
    })
  ]
}
