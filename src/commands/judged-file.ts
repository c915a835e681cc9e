import { env } from 'node:process'
import type { Diagnostic } from '../quantity/diagnostic.ts'
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
  if (!('text' in read)) return { ...UNREAD, file, errors: [read.error] }
  try {
    return judgeJob(file, read.text, { practice, rules: chosenRules(only, skip), samples }, read.bench)
  } catch (error) {
    if (env['FETTLE_DEBUG']) throw error
    return { ...UNREAD, file, errors: [faultOfProgram(file, error)], failed: true }
  }
}

const UNREAD = { title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [] } as const

/** What this program fails at leaves the other files their verdicts. */
function faultOfProgram(file: string, error: unknown): Diagnostic {
  const { name, message } = error instanceof Error ? error : new Error(String(error))
  const found = `a fault of this program, not of this file: ${name}: ${message}`
  return { found, accepted: 'please report it with the file', where: { file, line: null, column: null, path: '' } }
}
