import { showNumber } from '../../../quantity/show.ts'
import { tapsOf } from '../taps-of.ts'
import { type ScrapOf, scrap } from './scrap.ts'

/** The full thread: short of it by the gap that is left, and the part jams in the run-out. */
export const threadShort: ScrapOf = hole => {
  const depth = tapsOf(hole).at(-1)?.thread ?? null
  const gap = hole.result('seat.run-out.with-stack')
  if (depth === null || typeof gap?.value !== 'number') return undefined
  const room = gap.low ?? gap.value
  const short = showNumber(Math.abs(room), 'length')
  const says =
    room < 0
      ? `below the face: ${short} mm too little at the worst end, and the part jams before its shoulder lands`
      : `below the face; ${short} mm less, at the worst end, and the part jams before its shoulder lands`
  return scrap(hole, { ...depth, name: 'full thread' }, room, says)
}
