import { Given } from '../formula/given.ts'
import type { Rim } from '../trade/hole/neck-rim.ts'
import { onRim } from '../trade/hole/odd-lengths.ts'
import { basicSizes } from '../trade/thread/basic.ts'
import type { Job } from './read-job.ts'

type Hole = Job['holes'][string]
type Part = Job['parts'][string]
type Seating = Pick<Hole, 'under-shoulder' | 'crush' | 'mouth' | 'drill'>

/** Whether a neck of this width stands on the rim of its hole before the shoulder lands, in words; null where it does not. */
export function neckOnRim(
  neckMm: Given,
  { 'under-shoulder': under, crush, mouth, drill }: Seating,
  { undercut, thread }: Part
): string | null {
  return onRim({
    neckMm,
    undercutMm: undercut.assumed === undefined ? undercut : null,
    stack: under.map(({ thickness }) => thickness),
    crushMm: crush,
    clearMm: clearOf(drill, thread),
    mouthMm: mouth,
    thread
  })
}

/** The same with nothing under the shoulder. */
export function bareNeckOnRim(neckMm: Given, hole: Hole, part: Part): string | null {
  return neckOnRim(neckMm, { ...hole, 'under-shoulder': [], crush: new Given(0) }, part)
}

/** The same as numbers: null where the part tells no such neck. */
export function rimOf({ drill }: Hole, { body, undercut: undercutMm, thread }: Part): Rim | null {
  const neckMm = body?.neck ?? null
  const clear = clearOf(drill, thread)
  if (neckMm === null || undercutMm.assumed !== undefined || neckMm.high <= clear) return null
  return { neckMm, undercutMm, clearMm: new Given(clear), minorMm: new Given(basicSizes(thread).minorDiameterMm) }
}

/** Between the crests of the thread in the hole. */
function clearOf({ size }: Hole['drill'], thread: Part['thread']): number {
  return Math.max(basicSizes(thread).minorDiameterMm, size?.diameterMm ?? 0)
}
