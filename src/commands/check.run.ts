import { faultText } from '../report/fault-text.ts'
import type { JobAnswer, JobsAnswer } from '../report/jobs-answer.ts'
import { jobsDocument } from '../report/jobs-json.ts'
import { judgeJob } from '../work/job/judge-job.ts'
import { check as description } from './check.ts'
import type { Run, Shell } from './describe.ts'
import { exitOf } from './exit.ts'
import { findFiles } from './find-files.ts'
import { readJobFile } from './read-job-file.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words } = readWords(description.rows, {}, typed)
  const files = await findFiles(words.files)
  const jobs: JobAnswer[] = []
  for (const file of files) jobs.push(await judgedFile(file))
  await printed({ command: description.name, jobs }, shell)
  return Math.max(0, ...jobs.map(({ errors, findings }) => exitOf({ errors, findings }, shell)))
}

/** A file that cannot be read is a fault of that file alone. */
async function judgedFile(file: string): Promise<JobAnswer> {
  const read = await readJobFile(file)
  if ('text' in read) return judgeJob(file, read.text)
  return { file, title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [], errors: [read.error] }
}

async function printed(answer: JobsAnswer, shell: Shell): Promise<void> {
  for (const error of answer.jobs.flatMap(({ errors }) => errors)) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(jobsDocument(answer), null, 2)}\n`)
  else shell.out((await import('../report/jobs-page.ts')).jobsPage(answer, shell))
}
