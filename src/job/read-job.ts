import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import type { Path, Read } from './field.ts'
import { type Unreadable, unreadable } from './form-limits.ts'
import { placeOf } from './place.ts'
import { FieldReader } from './read-fields.ts'
import { JOB } from './schema/job.ts'
import { readYaml } from './yaml-text.ts'

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
  const refused = unreadable(text)
  if (refused !== undefined) return unread(file, placed(file, text, refused))
  const { job: source, errors } = readYaml(file, text)
  const reader = new FieldReader(source)
  const job = reader.read(JOB, source.document.contents, []) as Job
  // A file with a broken form gives fields that are not there: only the form is worth telling.
  return { file, job, locate: path => placeOf(source, path), errors: shownOf(errors.length > 0 ? errors : reader.errors) }
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
