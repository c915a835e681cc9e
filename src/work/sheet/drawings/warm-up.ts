import type { Drawing } from '../../../report/drawing/drawing.ts'
import { warmCourseDrawing } from '../../../report/drawing/warm-course.ts'
import { warmCourse } from '../../drawing/warm-course.ts'
import type { JudgedJob } from '../../job/judged-job.ts'

/** How the casting warms; nothing where too little is known of it. */
export function warmUp({ job, result }: JudgedJob): readonly Drawing[] {
  const powerW = result('warm:warm.power')?.value
  if (job.warm === null || typeof powerW !== 'number') return []
  const course = warmCourse({ ...job, warm: job.warm }, powerW)
  return course === null ? [] : [warmCourseDrawing(course, 'warm-up')]
}
