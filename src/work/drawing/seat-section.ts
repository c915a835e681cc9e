import type { Plain } from '../../formula/given.ts'
import { showNumber } from '../../quantity/show.ts'
import type { Outline, Section } from '../../report/drawing/section.ts'
import type { Seat, seat } from '../../trade/hole/seat.ts'
import { leftMark, mark } from './mark.ts'

interface Sizes {
  readonly name: string
  readonly majorMm: number
  readonly minorMm: number
}

/** A part seated on its stack, at the nominal sizes. What is not known of the hole is drawn as deep as its thread. */
export function seatSection(thread: Sizes, seated: Plain<Seat>, { stackMm, runOut, floor }: ReturnType<typeof seat>): Section {
  const { name, majorMm, minorMm } = thread
  const { threadLengthMm, threadDepthMm, crushMm } = seated
  const underMm = Math.max(0, stackMm - crushMm)
  const endMm = seated.floor === null ? threadLengthMm - underMm : seated.floor.overallMm - underMm
  const floorMm = seated.floor?.floorDepthMm ?? threadDepthMm
  const hole: Outline = [
    [0, floorMm],
    [minorMm / 2, floorMm],
    [minorMm / 2, 0]
  ]
  return {
    title: `${name} seated, in section, to scale but for the shoulder`,
    says: words(name, runOut.withStackMm, floor?.withStackMm ?? null),
    found: hole,
    drilled: hole,
    thread: threadDepthMm > 0 ? { majorMm, depthMm: threadDepthMm } : null,
    backMm: null,
    sideMm: null,
    part: { majorMm, minorMm, threadEndMm: threadLengthMm - underMm, endMm, stackMm: underMm },
    marks: [
      leftMark(threadLengthMm - underMm, "end of the part's thread"),
      mark(threadDepthMm, 'end of full thread in the hole', 'depth-down'),
      ...(seated.floor === null ? [] : [leftMark(endMm, 'end of the part'), mark(floorMm, 'floor', 'depth-down')])
    ]
  }
}

function words(name: string, runOutMm: number, floorMm: number | null): string {
  const gap = (what: string, mm: number) =>
    mm >= 0 ? `${showNumber(mm, 'depth')} mm of room before ${what}` : `${what} stops it ${showNumber(-mm, 'depth')} mm short`
  return [`${name} on its stack: ${gap('the thread runs out', runOutMm)}`, ...(floorMm === null ? [] : [gap('the floor', floorMm)])].join(
    '; '
  )
}
