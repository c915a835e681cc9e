import type { Plan } from '../../report/plan/plan.ts'
import type { JudgedJob } from '../job/judged-job.ts'
import { cautionsOf } from './cautions.ts'
import { scrapsOf } from './scraps/list.ts'
import { stepsOf } from './steps.ts'

/** The order of work of a judged job. */
export function planOf(judged: JudgedJob): Plan {
  const { file, title, results, findings, errors } = judged.answer
  const empty = { scraps: [], steps: [], cautions: [] }
  const made = errors.length > 0 ? empty : { scraps: scrapsOf(judged), steps: stepsOf(judged), cautions: cautionsOf(judged) }
  return { command: 'plan', file, title, results, findings, errors, ...made }
}
