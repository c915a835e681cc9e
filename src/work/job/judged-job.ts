import type { HoleFit } from '../../fitting/hole-fit.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { BenchText } from '../../job/bench.ts'
import { type Job, type ReadJob, readJob } from '../../job/read-job.ts'
import type { Result } from '../../report/answer.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import { holeFitOf, type JobHole, type JobPart } from './hole-fit-of.ts'
import { judgeRead } from './judge-job.ts'
import { type Points, pointsOf } from './points.ts'

/** A job, read and judged: what plan and sheet are made of. With errors, the fields are not to be used. */
export interface JudgedJob {
  readonly job: Job
  readonly locate: ReadJob['locate']
  readonly answer: JobAnswer
  /** A result by its id, as `holes.left:hole.tip-depth`. */
  readonly result: (id: string) => Result | undefined
  readonly holes: readonly HoleInWork[]
  readonly points: Points | null
}

/** One hole with its part and what was worked out for it. */
export interface HoleInWork {
  readonly name: string
  readonly place: string
  readonly hole: JobHole
  readonly part: JobPart
  /** As a calculation is given it; null where it has no answer. */
  readonly fit: HoleFit | null
  /** A result of this hole, as `hole.tip-depth`. */
  readonly result: (id: string) => Result | undefined
}

export function judgedJob(file: string, text: string, bench: BenchText | null = null): JudgedJob {
  const read = readJob(file, text, bench)
  const answer = judgeRead(read)
  const byId = new Map(answer.results.map(result => [result.id, result]))
  const result = (id: string) => byId.get(id)
  const { job, locate } = read
  if (answer.errors.length > 0) return { job, locate, answer, result, holes: [], points: null }
  return { job, locate, answer, result, holes: holesOf(job, result), points: pointsOf(job) }
}

function holesOf(job: Job, result: JudgedJob['result']): readonly HoleInWork[] {
  const { holes, parts } = job
  return Object.entries(holes).map(([name, hole]) => {
    const place = `holes.${name}`
    const part = parts[hole.takes]!
    return { name, place, hole, part, fit: fitOf(job, hole, part), result: id => result(`${place}:${id}`) }
  })
}

function fitOf(job: Job, hole: JobHole, part: JobPart): HoleFit | null {
  try {
    return holeFitOf(job, hole, part)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}

/** What any thing of the job has under this id: of rooms whose place in the job is their own. */
export function everywhere({ answer }: Pick<JudgedJob, 'answer'>, id: string): readonly Result[] {
  return answer.results.filter(result => result.id.endsWith(`:${id}`))
}
