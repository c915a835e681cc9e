import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { faultText } from '../report/fault-text.ts'
import type { JobAnswer } from '../report/jobs-answer.ts'
import type { JobsPage, JobsPrinter } from '../report/jobs-printer.ts'
import { judgeJob, type Wanted } from '../work/job/judge-job.ts'
import { check as description } from './check.ts'
import { chosenRules, readOnly, readRuleId } from './chosen-rules.ts'
import type { Run, Shell } from './describe.ts'
import { exitOfJob } from './exit.ts'
import { findFiles } from './find-files.ts'
import { PIPED, readJobFile } from './read-job-file.ts'
import { refuse } from './refuse.ts'
import { changesFromNow } from './watch-files.ts'
import { readWords, type Words } from './words.ts'

const readers = { only: readOnly, skip: readRuleId }
type CheckWords = Words<typeof description.rows, typeof readers>
type Format = CheckWords['format']

const PRINTERS: { readonly [F in Format]: () => Promise<{ readonly printer: (page: JobsPage) => JobsPrinter }> } = {
  table: () => import('../report/jobs-page.ts'),
  json: () => import('../report/jobs-json.ts'),
  ndjson: () => import('../report/jobs-lines.ts'),
  junit: () => import('../report/jobs-junit.ts'),
  sarif: () => import('../report/jobs-sarif.ts'),
  markdown: () => import('../report/jobs-markdown.ts')
}
/** What can be read while more is still to come. */
const GOING_ON: readonly Format[] = ['table', 'ndjson', 'markdown']

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, readers, typed)
  const format = shell.json ? 'json' : words.format
  const wrong = errors.length > 0 ? errors : togetherWrong(words, format)
  if (wrong.length > 0) return refuse(description.name, wrong, { ...shell, json: shell.json || words.format === 'json' })
  const { printer } = await PRINTERS[format]()
  const page = { ...shell, command: description.name }
  const wanted = {
    practice: words.practice ?? undefined,
    rules: chosenRules(words.only ?? [], words.skip ?? []),
    samples: words.samples?.value ?? 0
  }
  // Before the first file is read: nothing that changes meanwhile is missed.
  const changes = words.watch ? await changesFromNow(words.files, shell.live.stop) : []
  const exit = await checked(await findFiles(words.files), { wanted, shell, printer: printer(page) })
  for await (const files of changes) await checked(files, { wanted, shell, printer: printer(page) })
  return exit
}

interface Checking {
  readonly wanted: Wanted
  readonly shell: Shell
  readonly printer: JobsPrinter
}

/** Judges one file after the other and prints each as soon as it can be. */
async function checked(files: readonly string[], { wanted, shell, printer }: Checking): Promise<number> {
  const { out, err, live } = shell
  let exit = 0
  for (const [i, file] of files.entries()) {
    if (live.stop.aborted) break
    if (files.length > 1 && !shell.quiet) live.progress(`${i + 1} of ${files.length}  ${file}`)
    const job = await judgedFile(file, wanted, shell)
    live.progress('')
    for (const error of job.errors) err(faultText(error))
    exit = Math.max(exit, exitOfJob(job, shell))
    out(printer.job(job))
    await live.drained()
  }
  out(printer.end(exit))
  return exit
}

/** A file that cannot be read is a fault of that file alone. */
async function judgedFile(file: string, wanted: Wanted, { live }: Shell): Promise<JobAnswer> {
  const read = await readJobFile(file, live)
  if ('text' in read) return judgeJob(file, read.text, wanted, read.bench)
  return { file, title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [], errors: [read.error] }
}

/** Words that are each right and shut each other out. */
function togetherWrong({ watch, files, samples }: CheckWords, format: Format): readonly Diagnostic[] {
  const wrong = (path: string, found: string, accepted: string) => ({ found, accepted, where: onCommandLine(path) })
  return [
    ...(watch && !GOING_ON.includes(format) ? [wrong('--watch', `--watch with --format ${format}`, GOING_ON.join(', '))] : []),
    ...(watch && files.includes(PIPED) ? [wrong('--watch', '--watch of what is piped in', 'files')] : []),
    ...(samples !== null && !(samples.value >= 100 && samples.high <= MOST_SAMPLES)
      ? [wrong('--samples', `${samples.value} samples`, `100 to ${MOST_SAMPLES}`)]
      : [])
  ]
}

const MOST_SAMPLES = 100_000
