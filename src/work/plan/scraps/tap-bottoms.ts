import { showNumber } from '../../../quantity/show.ts'
import { tapsOf } from '../taps-of.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** The turns of a tap, those of the shallowest hole: a little more, and its end meets the end of the drilled hole and breaks. */
export const tapBottoms: ScrapOf = (hole, judged) => {
  const { turns, end } = tapsOf(hole).at(-1) ?? {}
  if (turns == null || end == null) return undefined
  const { pitchMm } = hole.part.thread
  const room = (judged.job.tools['tap-clear']?.low ?? pitchMm) / pitchMm
  const counted = `for every tap, its end then ${end.text} below the face`
  const says =
    room > 0
      ? `${counted}: ${showNumber(room, 'turns-down')} of a turn more, at the worst end, and it meets the end of the hole and breaks`
      : `${counted}: at the worst end it meets the end of the hole there`
  return scrap(hole, { ...turns, name: 'turns of the tap' }, room, says)
}
