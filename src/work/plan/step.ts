import type { Figure, Part, Step } from '../../report/plan/plan.ts'
import type { HoleInWork, JudgedJob } from '../job/judged-job.ts'

/** Steps that a job asks for; undefined where it does not. */
export type StepsOf = (judged: JudgedJob) => readonly Step[] | undefined
/** The same for each hole. */
export type HoleStepsOf = (hole: HoleInWork, judged: JudgedJob) => readonly Step[] | undefined

interface More {
  readonly figure?: Figure | null
  readonly caution?: string | undefined
  readonly blank?: string
  readonly source?: string | undefined
}

/** One action of a part of the work. */
export function step(part: Part, thing: string, says: string, { figure = null, caution, blank, source }: More = {}): Step {
  return { part, thing, figure, says, caution: caution ?? null, blank: blank ?? null, source: source ?? null }
}
