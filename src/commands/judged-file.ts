import type { JobAnswer } from '../report/jobs-answer.ts'
import type { PracticeName } from '../trade/practice-names.ts'
import { judgeJob } from '../work/job/judge-job.ts'
import { chosenRules } from './chosen-rules.ts'
import type { Live } from './describe.ts'
import { readJobFile } from './read-job-file.ts'

/** By what jobs are judged, in words that another thread takes as well. */
export interface Judging {
  readonly practice: PracticeName | undefined
  readonly only: readonly string[]
  readonly skip: readonly string[]
  readonly samples: number
}

/** A file that cannot be read is a fault of that file alone. */
export async function judgedFile(file: string, { practice, only, skip, samples }: Judging, live: Pick<Live, 'input'>): Promise<JobAnswer> {
  const read = await readJobFile(file, live)
  if ('text' in read) return judgeJob(file, read.text, { practice, rules: chosenRules(only, skip), samples }, read.bench)
  return { file, title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [], errors: [read.error] }
}
