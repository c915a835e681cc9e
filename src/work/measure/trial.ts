import { withValue } from '../../job/leaf-fields.ts'
import type { Job, ReadJob } from '../../job/read-job.ts'
import { depthOf, type FieldValue, readText } from '../../job/with-text.ts'
import type { Diagnostic } from '../../quantity/diagnostic.ts'
import type { PlacedFinding } from '../../report/jobs-answer.ts'
import { judgeRead } from '../job/judge-job.ts'
import type { Candidate } from './candidate.ts'

/** What is said of a job by every rule that was asked, under the thing and the rule. */
export type Verdicts = ReadonlyMap<string, PlacedFinding>

/** A job that a field is tried in: read once, judged with one value after the other. */
export interface Trial {
  readonly read: ReadJob
  /** Null where a field was put in that cannot be read. */
  readonly job: Job | null
}

/** The verdicts of a job, or why there are none. */
export function judgedTrial({ read, job }: Trial): { readonly verdicts: Verdicts } | { readonly errors: readonly Diagnostic[] } {
  if (job === null) return { errors: [] }
  const { errors, findings } = judgeRead({ ...read, job })
  return errors.length > 0 ? { errors } : { verdicts: new Map(findings.map(finding => [`${finding.thing} ${finding.rule}`, finding])) }
}

/** The verdicts of a job; undefined where a field of it cannot be read or lies outside a range. */
export function verdictsOf(trial: Trial): Verdicts | undefined {
  const judged = judgedTrial(trial)
  return 'verdicts' in judged ? judged.verdicts : undefined
}

/** The job with a field put in, and with what must stand beside it. */
export function withField({ read, job }: Trial, candidate: Candidate, text: string): Trial {
  const found = job === null ? null : readOnce(job, candidate, text)
  return { read, job: job === null || found === null ? null : withValue(job, found.path, found.value) }
}

const values = new WeakMap<Candidate, Map<string, FieldValue | null>>()

/** One text of one field is read once for each block that it may have to bring along. */
function readOnce(job: Job, candidate: Candidate, text: string): FieldValue | null {
  const known = values.get(candidate) ?? new Map<string, FieldValue | null>()
  values.set(candidate, known)
  const { path, beside } = candidate
  const key = `${depthOf(job, path)} ${text}`
  if (!known.has(key)) known.set(key, readText(job, { path, text }, beside))
  return known.get(key)!
}

export function unjudged(verdicts: Verdicts): readonly string[] {
  return [...verdicts].flatMap(([key, { verdict }]) => (verdict === 'not-judged' ? [key] : []))
}
