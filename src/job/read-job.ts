import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import type { Path, Read } from './field.ts'
import { placeOf } from './place.ts'
import { FieldReader } from './read-fields.ts'
import { JOB } from './schema/job.ts'
import { GREATEST_BYTES, readYaml } from './yaml-text.ts'

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
export function readJob(file: string, text: string): ReadJob {
  if (text.length > GREATEST_BYTES)
    return unread(file, {
      found: `a file of ${(text.length / 1e6).toFixed(1)} MB`,
      accepted: 'a job file, below 1 MB',
      where: { file, line: null, column: null, path: '' }
    })
  const { job: source, errors } = readYaml(file, text)
  const reader = new FieldReader(source)
  const job = reader.read(JOB, source.document.contents, []) as Job
  // A file with a broken form gives fields that are not there: only the form is worth telling.
  return { file, job, locate: path => placeOf(source, path), errors: errors.length > 0 ? errors : reader.errors }
}

/** A job of which nothing is known but why. */
export function unread(file: string, error: Diagnostic): ReadJob {
  return {
    file,
    job: undefined as unknown as Job,
    locate: path => ({ file, line: null, column: null, path: path.join('.') }),
    errors: [error]
  }
}
