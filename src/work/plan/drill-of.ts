import { takenDrill } from '../../trade/thread/taken-drill.ts'
import type { HoleInWork } from '../job/judged-job.ts'

/** The drill of the job, or the one that is taken for its thread. */
export function drillMmOf({ hole, part }: Pick<HoleInWork, 'hole' | 'part'>): number {
  return hole.drill.size?.diameterMm ?? takenDrill(part.thread).diameterMm
}
