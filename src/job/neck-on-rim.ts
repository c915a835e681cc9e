import type { Given } from '../formula/given.ts'
import { onRim } from '../trade/hole/odd-lengths.ts'
import { basicSizes } from '../trade/thread/basic.ts'
import type { Job } from './read-job.ts'

type Hole = Job['holes'][string]
type Part = Job['parts'][string]

/** Whether a neck of this width stands on the rim of its hole before the shoulder lands, in words; null where it does not. */
export function neckOnRim(
  neckMm: Given,
  { 'under-shoulder': under, crush, mouth, drill }: Hole,
  { undercut, thread }: Part
): string | null {
  return onRim({
    neckMm,
    undercutMm: undercut.assumed === undefined ? undercut : null,
    stack: under.map(({ thickness }) => thickness),
    crushMm: crush,
    clearMm: Math.max(basicSizes(thread).minorDiameterMm, drill.size?.diameterMm ?? 0),
    mouthMm: mouth,
    thread
  })
}
