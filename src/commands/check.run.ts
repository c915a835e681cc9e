import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { faultText } from '../report/fault-text.ts'
import type { JobAnswer } from '../report/jobs-answer.ts'
import type { JobsPage, JobsPrinter } from '../report/jobs-printer.ts'
import { check as description } from './check.ts'
import { readOnly, readRuleId } from './chosen-rules.ts'
import type { Run, Shell } from './describe.ts'
import { exitOfJob } from './exit.ts'
import { findFiles } from './find-files.ts'
import { type Judging, judgedFile } from './judged-file.ts'
import { type Asked, judgedOnThreads, threadsFor } from './judging-threads.ts'
import { PIPED } from './read-job-file.ts'
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
  const judging = {
    practice: words.practice ?? undefined,
    only: words.only ?? [],
    skip: words.skip ?? [],
    samples: words.samples?.value ?? 0
  }
  const threads = words.threads?.value
  // Before the first file is read: nothing that changes meanwhile is missed.
  const changes = words.watch ? await changesFromNow(words.files, shell.live.stop) : []
  const exit = await checked(await findFiles(words.files), { judging, threads, shell, printer: printer(page) })
  for await (const files of changes) await checked(files, { judging, threads, shell, printer: printer(page) })
  return exit
}

interface Checking {
  readonly judging: Judging
  readonly threads: number | undefined
  readonly shell: Shell
  readonly printer: JobsPrinter
}

/** Prints each job as soon as it can be. */
async function checked(files: readonly string[], checking: Checking): Promise<number> {
  const { printer, shell } = checking
  const { out, err, live } = shell
  const told = (done: number) =>
    files.length > 1 && files[done] !== undefined && !shell.quiet && live.progress(`${done + 1} of ${files.length}  ${files[done]}`)
  let [exit, done] = [0, 0]
  told(done)
  for await (const job of judgedFiles(files, checking)) {
    live.progress('')
    if (live.stop.aborted) break
    for (const error of job.errors) err(faultText(error))
    exit = Math.max(exit, exitOfJob(job, shell))
    out(printer.job(job))
    await live.drained()
    told(++done)
  }
  out(printer.end(exit))
  return exit
}

/** In their order: one after the other, or on several threads where that pays or is wanted. */
function judgedFiles(files: readonly string[], { judging, threads, shell: { live } }: Checking): AsyncIterable<JobAnswer> {
  const count = threadsFor(files, threads)
  if (live.thread !== undefined && count > 1) return judgedOnThreads(files, judging, { start: live.thread, count })
  return judgedInTurn(files, judging, live)
}

async function* judgedInTurn(files: readonly string[], judging: Judging, live: Shell['live']): AsyncGenerator<JobAnswer> {
  for (const file of files) yield await judgedFile(file, judging, live)
}

/** What a thread does with what it is asked. */
export function judgeOnThread({ file, judging }: Asked): Promise<JobAnswer> {
  return judgedFile(file, judging, { input: nothingPiped() })
}

async function* nothingPiped(): AsyncGenerator<never> {}

/** Words that are each right and shut each other out. */
function togetherWrong({ watch, files, samples, threads }: CheckWords, format: Format): readonly Diagnostic[] {
  const wrong = (path: string, found: string, accepted: string) => ({ found, accepted, where: onCommandLine(path) })
  return [
    ...(watch && !GOING_ON.includes(format) ? [wrong('--watch', `--watch with --format ${format}`, GOING_ON.join(', '))] : []),
    ...(watch && files.includes(PIPED) ? [wrong('--watch', '--watch of what is piped in', 'files')] : []),
    ...(samples !== null && !(samples.value >= 100 && samples.high <= MOST_SAMPLES)
      ? [wrong('--samples', `${samples.value} samples`, `100 to ${MOST_SAMPLES}`)]
      : []),
    ...(threads !== null && !(Number.isInteger(threads.value) && threads.value >= 1 && threads.high <= MOST_THREADS)
      ? [wrong('--threads', `${threads.value} threads`, `1 to ${MOST_THREADS}`)]
      : [])
  ]
}

const MOST_SAMPLES = 100_000
const MOST_THREADS = 64
