import { Given } from '../formula/given.ts'
import { type Rim, wideNeck } from '../trade/hole/neck-rim.ts'
import { onRim } from '../trade/hole/odd-lengths.ts'
import { basicSizes } from '../trade/thread/basic.ts'
import type { Job } from './read-job.ts'

type Hole = Job['holes'][string]
type Part = Job['parts'][string]
type Seating = Pick<Hole, 'under-shoulder' | 'crush' | 'mouth' | 'drill' | 'found'>

/** Whether a neck of this width stands on the rim of its hole before the shoulder lands, in words; null where it does not. */
export function neckOnRim(neckMm: Given, { 'under-shoulder': under, crush, mouth, ...opened }: Seating, part: Part): string | null {
  return onRim({
    neckMm,
    undercutMm: part.undercut.assumed === undefined ? part.undercut : null,
    stack: under.map(({ thickness }) => thickness),
    crushMm: crush,
    clearMm: clearOf(opened, part),
    mouthMm: mouth,
    thread: part.thread
  })
}

/** The same with nothing under the shoulder. */
export function bareNeckOnRim(neckMm: Given, hole: Hole, part: Part): string | null {
  return neckOnRim(neckMm, { ...hole, 'under-shoulder': [], crush: new Given(0) }, part)
}

/** The same as numbers: null where the part tells no such neck. */
export function rimOf(hole: Hole, part: Part): Rim | null {
  const { minorDiameterMm: minorMm } = basicSizes(part.thread)
  return wideNeck({ neckMm: part.body?.neck ?? null, undercutMm: part.undercut, clearMm: clearOf(hole, part), minorMm })
}

/** Between the crests of the thread in the hole: as wide as its drill, or as it was found at least. */
function clearOf({ drill: { size }, found }: Pick<Hole, 'drill' | 'found'>, { thread, undercut }: Part): number {
  return Math.max(basicSizes(thread).minorDiameterMm, size?.diameterMm ?? 0, foundAlong(found, undercut))
}

/** Of the old hole what is surely as wide along the whole neck, above any cone; nought where it is too shallow. */
function foundAlong({ diameter, depth }: Hole['found'], undercut: Given): number {
  return depth.low - diameter.high >= undercut.high ? diameter.low : 0
}
