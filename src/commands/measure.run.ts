import type { Diagnostic } from '../quantity/diagnostic.ts'
import { visible } from '../quantity/quoted.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf } from '../report/json.ts'
import { measuringSheet } from '../report/measuring-sheet.ts'
import { blankSheet } from '../work/measure/blank-sheet.ts'
import { type MeasuredJob, measureJob } from '../work/measure/measure-job.ts'
import type { Run, Shell } from './describe.ts'
import { measure as description } from './measure.ts'
import { readJobFile } from './read-job-file.ts'
import { readWords } from './words.ts'
import { writeWhole } from './write-whole.ts'

export const run: Run = async (typed, shell) => {
  const { words } = readWords(description.rows, {}, typed)
  const read = await readJobFile(words.file, shell.live)
  const measured = 'text' in read ? measureJob(words.file, read.text, read.bench) : unread(read.error)
  await printed(measured, shell)
  if (measured.answer.errors !== undefined) return 2
  return words.output === null || !('text' in read)
    ? 0
    : written(words.output, measuringSheet(blankSheet(measured, read.text)), words.force, shell)
}

function unread(error: Diagnostic): MeasuredJob {
  const answer = { command: description.name, title: '', inputs: {}, results: [], tables: {}, findings: [], cautions: [], errors: [error] }
  return { answer, fields: [], locate: () => error.where }
}

async function printed({ answer, locate }: MeasuredJob, shell: Shell): Promise<void> {
  for (const error of answer.errors ?? []) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentOf(answer, locate), null, 2)}\n`)
  else if (answer.errors === undefined) shell.out((await import('../report/page.ts')).pageOf(answer, shell))
}

async function written(file: string, text: string, over: boolean, { err, quiet }: Shell): Promise<number> {
  const refused = await writeWhole(file, text, { over })
  if (refused !== undefined) err(faultText(refused))
  else if (!quiet) err(`wrote ${visible(file)}\n`)
  return refused === undefined ? 0 : 2
}
