import type { Step } from '../../../report/plan/plan.ts'
import { ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { type CutTap, tapsOf } from '../taps-of.ts'

/** Each tap in its turn, counted: a tap is stopped by its turns and not by feel. */
export const tapping: HoleStepsOf = (hole, judged) => {
  const taps = tapsOf(hole, judged)
  if (taps.length === 0) return undefined
  const { place, part } = hole
  const { alloy } = hole.hole.casting
  return [
    step('tap', place, `${alloy === null ? 'ask what the casting is, and put' : `put`} cutting fluid on the tap: ${fluid(alloy)}`, {
      source: 'hand-tapping'
    }),
    ...taps.flatMap((tap, i) => steps(tap, { place, thread: part.thread.name, first: i === 0 })),
    ...depth(taps.at(-1)!, place)
  ]
}

function fluid(alloy: string | null): string {
  const cast = alloy === null ? '' : ` (this casting: ${alloy})`
  return `light oil on aluminium and brass, oil on steel, none on grey iron${cast}`
}

interface Where {
  readonly place: string
  readonly thread: string
  readonly first: boolean
}

function steps({ name, turns }: CutTap, { place, thread, first }: Where): readonly Step[] {
  const figure = ofResult(turns, 'turns-down', `turns, ${name} tap`)
  if (figure === null) return []
  if (figure.value <= 0) return [step('tap', place, `leave the ${name} tap: the hole is too shallow for any turn of it`)]
  return [
    step('tap', place, `${name} tap, ${thread}: so many turns from its end level with the face, and no more`, {
      figure,
      caution: first ? 'start it square, look from two sides' : 'start it by hand in the thread that is there',
      source: 'geometry'
    }),
    step('tap', place, `${name} tap: back it off half a turn after each full turn; take it out and clear the chips often`, {
      caution: 'a tap that springs is about to break: back it off, clear, look',
      source: 'hand-tapping'
    })
  ]
}

function depth({ name, depth }: CutTap, place: string): readonly Step[] {
  const figure = ofResult(depth, 'depth-down', `full thread after the ${name} tap`)
  if (figure === null || figure.value <= 0) return []
  return [step('tap', place, 'clean the hole dry and measure the full thread below the face', { figure, blank: 'full thread' })]
}
