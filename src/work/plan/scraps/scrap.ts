import type { Figure, Scrap } from '../../../report/plan/plan.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'

/** A number of a hole that scraps the casting when it is missed; undefined where it is not known. */
export type ScrapOf = (hole: HoleInWork, judged: JudgedJob) => Scrap | undefined

/** How far a number may be missed by, and that as a share of it. */
export function scrap({ place: thing }: HoleInWork, figure: Figure, room: number, says: string): Scrap {
  // A depth or a number of turns that is not even above nought is missed whatever one does.
  return { thing, figure, room, roomPercent: figure.value > 0 ? (100 * room) / figure.value : -100, says }
}
