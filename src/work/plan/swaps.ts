import { holeFit } from '../../fitting/hole-fit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'
import { neckOnRim } from '../../job/neck-on-rim.ts'
import { showNumber } from '../../quantity/show.ts'
import { thingName } from '../../report/plan/thing-name.ts'
import { holeFitOf, type JobPart } from '../job/hole-fit-of.ts'
import type { HoleInWork, JudgedJob } from '../job/judged-job.ts'

/** A part that screws into a hole it was not meant for, and what would come of it. */
export interface Swap {
  readonly into: HoleInWork
  /** Name of the part. */
  readonly part: string
  /** Room when its shoulder would land, at the worst end; null where that is not known. */
  readonly roomMm: number | null
  readonly engagedMm: number | null
  /** What its neck stands on before the shoulder lands, in words; null where it does not. */
  readonly onRim: string | null
}

/** Parts of other holes that have the thread of this one and are not alike what it takes. */
export function swapsInto(into: HoleInWork, { job, holes }: JudgedJob): readonly Swap[] {
  const others = new Map(holes.filter(other => isTaken(other, into)).map(({ hole, part }) => [hole.takes, part]))
  return [...others].map(([name, part]) => ({ into, part: name, onRim: rimOf(into, part), ...seatedIn(job, into, part) }))
}

export function swapsOf(judged: JudgedJob): readonly Swap[] {
  return judged.holes.flatMap(hole => swapsInto(hole, judged))
}

function isTaken({ part: other }: HoleInWork, { part: own }: HoleInWork): boolean {
  const [a, b] = [other.thread, own.thread]
  return a.majorMm === b.majorMm && a.pitchMm === b.pitchMm && asWritten(other) !== asWritten(own)
}

/** All that is said of a part, wherever that stands. */
function asWritten(part: JobPart): string {
  return JSON.stringify(part, (key, value) => (key === 'path' || key === 'at' ? undefined : value))
}

function rimOf({ hole }: HoleInWork, part: JobPart): string | null {
  const neckMm = part.body?.neck ?? null
  return neckMm === null ? null : neckOnRim(neckMm, hole, part)
}

function seatedIn(job: JudgedJob['job'], { hole }: HoleInWork, part: JobPart): Pick<Swap, 'roomMm' | 'engagedMm'> {
  const seat = seatOf({ job, hole, part })
  if (seat === null) return { roomMm: null, engagedMm: null }
  const { runOut, floor, engagedMm } = seat
  const roomMm = Math.min(runOut.withStackMm.low, floor?.withStackMm.low ?? Number.POSITIVE_INFINITY)
  // Without its whole length nobody knows that it stays off the floor.
  return { roomMm: floor === null && roomMm >= 0 ? null : roomMm, engagedMm: engagedMm.low }
}

interface Fitted {
  readonly job: JudgedJob['job']
  readonly hole: HoleInWork['hole']
  readonly part: JobPart
}

function seatOf({ job, hole, part }: Fitted) {
  try {
    return silently(() => boundsOf(holeFitOf(job, hole, part), holeFit).seat)
  } catch (error) {
    if (error instanceof NoAnswer || error instanceof OutsideRange) return null
    throw error
  }
}

/** Whether its thread, its end or its neck meets the hole before the shoulder lands. */
export function jams({ roomMm, onRim }: Swap): boolean {
  return (roomMm !== null && roomMm < 0) || onRim !== null
}

/** `never the long into hole a: …`. */
export function swapText({ into, part, roomMm, engagedMm, onRim }: Swap): string {
  const where = `never the ${part} into ${thingName(into.place)}`
  if (roomMm !== null && roomMm < 0)
    return `${where}: at the worst end it would jam with ${showNumber(-roomMm, 'length')} mm left under its shoulder, and crack the casting`
  if (onRim !== null) return `${where}: ${onRim}`
  if (roomMm === null || engagedMm === null) return `${where}: whether it would jam there nobody can work out yet`
  const heldMm = showNumber(Math.max(0, engagedMm), 'depth-down')
  return `${where}: it would seat, with ${heldMm} mm of thread engaged at the worst end, but not as it was worked out`
}
