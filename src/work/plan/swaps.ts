import { holeFit } from '../../fitting/hole-fit.ts'
import { answered } from '../../formula/answered.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
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
  /** Room of its thread and its end when its shoulder would land, at the worst end; null where that is not known. */
  readonly roomMm: number | null
  /** The same of a neck wider than the hole; null where it has none. */
  readonly rimMm: number | null
  readonly engagedMm: number | null
  /** What its neck stands on before the shoulder lands, in words; null where it does not. */
  readonly onRim: string | null
  /** The same of one whose width nobody told, as wide as the thread. */
  readonly wideOnRim: string | null
}

/** Parts of other holes that have the thread of this one and are not alike what it takes. */
export function swapsInto(into: HoleInWork, { job, holes }: JudgedJob): readonly Swap[] {
  const others = new Map(holes.filter(other => isTaken(other, into)).map(({ hole, part }) => [hole.takes, part]))
  return [...others].map(([name, part]) => ({ into, part: name, ...rimOf(into, part), ...seatedIn(job, into, part) }))
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

function rimOf({ hole }: HoleInWork, part: JobPart): Pick<Swap, 'onRim' | 'wideOnRim'> {
  const neckMm = part.body?.neck ?? null
  const onRim = neckOnRim(neckMm ?? new Given(part.thread.majorMm), hole, part)
  return neckMm === null ? { onRim: null, wideOnRim: onRim } : { onRim, wideOnRim: null }
}

function seatedIn(job: JudgedJob['job'], { hole }: HoleInWork, part: JobPart): Pick<Swap, 'roomMm' | 'rimMm' | 'engagedMm'> {
  const seat = seatOf({ job, hole, part })
  if (seat === null) return { roomMm: null, rimMm: null, engagedMm: null }
  const { runOut, floor, rim, engagedMm } = seat
  const roomMm = Math.min(runOut.withStackMm.low, floor?.withStackMm.low ?? Number.POSITIVE_INFINITY)
  // Without its whole length nobody knows that it stays off the floor.
  return {
    roomMm: floor === null && roomMm >= 0 ? null : roomMm,
    rimMm: rim?.withStackMm.low ?? null,
    engagedMm: engagedMm.low
  }
}

interface Fitted {
  readonly job: JudgedJob['job']
  readonly hole: HoleInWork['hole']
  readonly part: JobPart
}

function seatOf({ job, hole, part }: Fitted) {
  return answered(() => silently(() => boundsOf(holeFitOf(job, hole, part), holeFit).seat))
}

/** Whether its thread, its end or its neck meets the hole before the shoulder lands. */
export function jams({ roomMm, onRim }: Swap): boolean {
  return (roomMm !== null && roomMm < 0) || onRim !== null
}

/** `never the long into hole a: …`. */
export function swapText(swap: Swap): string {
  return `never the ${swap.part} into ${thingName(swap.into.place)}: ${stopText(swap) ?? landedText(swap)}`
}

/** What stops it first; null where nothing does that is known. */
function stopText({ roomMm, rimMm, onRim }: Swap): string | null {
  if (roomMm !== null && roomMm < Math.min(0, rimMm ?? 0))
    return `at the worst end it would jam with ${showNumber(-roomMm, 'length')} mm left under its shoulder, and crack the casting`
  return onRim
}

function landedText({ roomMm, engagedMm, wideOnRim }: Swap): string {
  if (roomMm === null || engagedMm === null) return 'whether it would jam there nobody can work out yet'
  if (wideOnRim !== null) return `nobody told how wide its neck is, and as wide as the thread it would jam: ${wideOnRim}`
  const heldMm = showNumber(Math.max(0, engagedMm), 'depth-down')
  return `it would seat, with ${heldMm} mm of thread engaged at the worst end, but not as it was worked out`
}
