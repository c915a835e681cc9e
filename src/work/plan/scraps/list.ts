import type { Scrap } from '../../../report/plan/plan.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { overTorque } from './over-torque.ts'
import type { ScrapOf } from './scrap.ts'
import { stackThin } from './stack-thin.ts'
import { tapBottoms } from './tap-bottoms.ts'
import { threadShort } from './thread-short.ts'
import { tooDeep } from './too-deep.ts'

/** In the order of work: of two that are as tight, the one that comes first stands first. */
const SCRAPS: readonly ScrapOf[] = [tooDeep, tapBottoms, threadShort, stackThin, overTorque]

/** Every number that scraps the casting, tightest first. */
export function scrapsOf(judged: JudgedJob): readonly Scrap[] {
  return judged.holes.flatMap(hole => SCRAPS.flatMap(of => of(hole, judged) ?? [])).sort((a, b) => a.roomPercent - b.roomPercent)
}
