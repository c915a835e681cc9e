import { publishedTapDrill } from '../../trade/thread/published-tap-drill.ts'
import type { HoleInWork } from '../job/judged-job.ts'

/** The drill of the job, or the published tap drill. */
export function drillMmOf({ hole, part }: Pick<HoleInWork, 'hole' | 'part'>): number {
  return hole.drill.size?.diameterMm ?? publishedTapDrill(part.thread).diameterMm
}
