import { showNumber } from '../../../quantity/show.ts'
import { ofResult } from '../figure.ts'
import { tapsOf } from '../taps-of.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** The turns of a tap: a little more, and its end meets the end of the drilled hole and breaks. */
export const tapBottoms: ScrapOf = (hole, judged) => {
  const last = tapsOf(hole).at(-1)
  const turns = ofResult(last?.turns, 'turns-down', 'turns of the tap')
  if (last === undefined || turns === null) return undefined
  const { pitchMm } = hole.part.thread
  const clearMm = judged.job.tools['tap-clear']?.low ?? pitchMm
  const room = clearMm / pitchMm - (turns.value - (turns.low ?? turns.value))
  const says =
    room > 0
      ? `for every tap, counted from its end level with the face: ${showNumber(room, 'turns-down')} of a turn more, at the worst end, and it meets the end of the hole and breaks`
      : 'for every tap, counted from its end level with the face: at the worst end it has met the end of the hole before'
  return scrap(hole, turns, room, says)
}
