import { onCommandLine } from '../quantity/diagnostic.ts'
import type { Answer } from '../report/answer.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf } from '../report/json.ts'
import { type ProvedJob, proveJob } from '../work/prove/prove-job.ts'
import type { Run, Shell } from './describe.ts'
import { exitOf } from './exit.ts'
import { prove as description } from './prove.ts'
import { readJobFile } from './read-job-file.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words } = readWords(description.rows, {}, typed)
  const proved = await provedFile(words.file, words.reading ?? [], shell)
  await printed(proved, shell)
  return exitOf(proved.answer, shell)
}

async function provedFile(file: string, typed: readonly string[], { working, live }: Shell): Promise<ProvedJob> {
  const read = await readJobFile(file, live)
  if ('text' in read) return proveJob({ file, text: read.text, bench: read.bench, typed, working })
  const answer: Answer = {
    command: description.name,
    title: '',
    inputs: {},
    results: [],
    tables: {},
    findings: [],
    cautions: [],
    errors: [read.error]
  }
  return { answer, locate: path => onCommandLine(path.join('.')) }
}

async function printed({ answer, locate }: ProvedJob, shell: Shell): Promise<void> {
  for (const error of answer.errors ?? []) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentOf(answer, locate), null, 2)}\n`)
  else if (answer.errors === undefined) shell.out((await import('../report/page.ts')).pageOf(answer, shell))
}
