import { showNumber } from '../../quantity/show.ts'
import type { HoleInWork } from '../job/judged-job.ts'

/** What would be, were the part seated with nothing under its shoulder; null where nothing belongs there, or nothing is known. */
export function withoutText({ hole, result }: HoleInWork): string | null {
  if (hole['under-shoulder'].length === 0) return null
  const gaps = ['seat.run-out.without-stack', 'seat.floor.without-stack'].map(id => result(id))
  const lowest = gaps.flatMap(gap => (typeof gap?.value === 'number' ? [gap.low ?? gap.value] : []))
  if (lowest.length === 0) return null
  const room = Math.min(...lowest)
  const never = `never without the ${hole['under-shoulder'].map(({ what }) => what).join(' and ')}`
  return room < 0
    ? `${never}: at the worst end the part would jam with ${showNumber(-room, 'length')} mm left under the shoulder, and crack the casting`
    : `${never}: it would seat, with ${showNumber(room, 'length')} mm of room left at the worst end, but not as it was worked out`
}
