import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import { type BenchText, withBench } from './bench.ts'
import type { Path, Read } from './field.ts'
import { type Unreadable, unreadable } from './form-limits.ts'
import { placeOf, stands } from './place.ts'
import { FieldReader } from './read-fields.ts'
import { BENCH } from './schema/bench.ts'
import { JOB } from './schema/job.ts'
import { type JobText, readYaml } from './yaml-text.ts'

export type Job = Read<typeof JOB>

/** A job as read: the fields, and where each stands. */
export interface ReadJob {
  readonly file: string
  readonly job: Job
  readonly locate: (path: Path) => Where
  /** Everything that could not be read; with any, the fields are not to be used. */
  readonly errors: readonly Diagnostic[]
}

/** Reads a job and gathers every fault of form and of fields in one go. */
export function readJob(file: string, text: string, bench: BenchText | null = null): ReadJob {
  const refused = unreadable(text)
  if (refused !== undefined) return unread(file, placed(file, text, refused))
  const { job: source, errors } = readYaml(file, text)
  const reader = new FieldReader(source)
  const job = reader.read(JOB, source.document.contents, []) as Job
  // A file with a broken form gives fields that are not there: only the form is worth telling.
  const faults = errors.length > 0 ? errors : reader.errors
  const read = { file, job, locate: (path: Path) => placeOf(source, path), errors: shownOf(faults) }
  return faults.length > 0 || job.bench === null ? read : atBench(read, source, bench)
}

/** The job with the tools and meters of the bench it names; what is said of them points into the file of the bench. */
function atBench(read: ReadJob, source: JobText, bench: BenchText | null): ReadJob {
  const missed = bench === null ? UNOPENED : 'error' in bench ? bench.error : null
  if (bench === null || !('text' in bench) || missed !== null) {
    const { found, accepted } = missed ?? UNOPENED
    return { ...read, errors: [{ found, accepted, where: read.locate(['bench']) }] }
  }
  const refused = unreadable(bench.text)
  if (refused !== undefined) return { ...read, errors: [placed(bench.file, bench.text, refused)] }
  const { job: text, errors } = readYaml(bench.file, bench.text)
  const reader = new FieldReader(text)
  const found = reader.read(BENCH, text.document.contents, []) as Read<typeof BENCH>
  if (errors.length + reader.errors.length > 0) return { ...read, errors: shownOf(errors.length > 0 ? errors : reader.errors) }
  return {
    ...read,
    job: withBench(read.job, found),
    locate: path => (!stands(source, path) && stands(text, path) ? placeOf(text, path) : read.locate(path))
  }
}

/** Only who may open files reads a bench, and finds its name before the job is read. */
const UNOPENED = { found: 'a bench that could not be opened', accepted: 'bench: FILE, on a line of its own' }

/** A job of which nothing is known but why. */
export function unread(file: string, error: Diagnostic): ReadJob {
  return {
    file,
    job: undefined as unknown as Job,
    locate: path => ({ file, line: null, column: null, path: path.join('.') }),
    errors: [error]
  }
}

function placed(file: string, text: string, { found, accepted, offset }: Unreadable): Diagnostic {
  const lines = text.slice(0, offset).split(/\r?\n/)
  return { found, accepted, where: { file, line: lines.length, column: lines.at(-1)!.length + 1, path: '' } }
}

/** More than a reader mends in one go; a file with more is hardly a job. */
const MOST_FAULTS = 200

/** All of them, and of a flood the first and how many there are. */
function shownOf(errors: readonly Diagnostic[]): readonly Diagnostic[] {
  if (errors.length <= MOST_FAULTS) return errors
  const { where } = errors[MOST_FAULTS]!
  return [...errors.slice(0, MOST_FAULTS), { found: `${errors.length - MOST_FAULTS} more faults`, accepted: 'a job file', where }]
}
