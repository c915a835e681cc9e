import { Given } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { bareNeckOnRim } from '../../job/neck-on-rim.ts'
import { showNumber } from '../../quantity/show.ts'
import type { HoleInWork } from '../job/judged-job.ts'

const BARE = ['seat.run-out.without-stack', 'seat.floor.without-stack', 'seat.rim.without-stack']

/** What would be, were the part seated with nothing under its shoulder; null where nothing belongs there, or nothing is known. */
export function withoutText(work: HoleInWork): string | null {
  const under = work.hole['under-shoulder']
  const gaps = BARE.map(id => work.result(id))
  const lowest = gaps.flatMap(gap => (typeof gap?.value === 'number' ? [gap.low ?? gap.value] : []))
  if (under.length === 0 || lowest.length === 0) return null
  return `never without the ${under.map(({ what }) => what).join(' and ')}: ${withRoom(Math.min(...lowest), work)}`
}

function withRoom(room: number, work: HoleInWork): string {
  if (room < 0)
    return `at the worst end the part would jam with ${showNumber(-room, 'length')} mm left under the shoulder, and crack the casting`
  const stands = asWideAsThread(work)
  return stands === null
    ? `it would seat, with ${showNumber(room, 'length')} mm of room left at the worst end, but not as it was worked out`
    : `nobody told how wide its neck is, and as wide as the thread it would jam: ${stands}`
}

/** What a neck of a width that nobody told may do. */
function asWideAsThread({ hole, part }: HoleInWork): string | null {
  const untold = (part.body?.neck ?? null) === null
  return untold ? silently(() => bareNeckOnRim(new Given(part.thread.majorMm), hole, part)) : null
}
