import { publishedTapDrill } from '../../trade/thread/published-tap-drill.ts'
import type { JobHole, JobPart } from '../job/hole-fit-of.ts'

/** The drill of the job, or the published tap drill. */
export function drillMmOf({ drill }: JobHole, { thread }: JobPart): number {
  return drill.size?.diameterMm ?? publishedTapDrill(thread).diameterMm
}
