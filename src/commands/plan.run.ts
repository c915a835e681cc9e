import { faultText } from '../report/fault-text.ts'
import { planDocument } from '../report/plan/plan-answer.ts'
import { judgedJob } from '../work/job/judged-job.ts'
import { planOf } from '../work/plan/plan.ts'
import type { Run } from './describe.ts'
import { exitOf } from './exit.ts'
import { plan as description } from './plan.ts'
import { readJobFile } from './read-job-file.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words } = readWords(description.rows, {}, typed)
  const read = await readJobFile(words.file, shell.live)
  const plan = 'text' in read ? planOf(judgedJob(words.file, read.text, read.bench)) : { ...UNREAD, file: words.file, errors: [read.error] }
  for (const error of plan.errors) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(planDocument(plan), null, 2)}\n`)
  else if (plan.errors.length === 0) shell.out((await import('../report/plan/plan-page.ts')).planPage(plan, shell))
  return exitOf(plan, shell)
}

const UNREAD = { command: 'plan', title: '', scraps: [], steps: [], results: [], findings: [], cautions: [] }
