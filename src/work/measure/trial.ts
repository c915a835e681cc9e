import { isSaid, type Said, saidWith, textOf } from '../../job/rewritten.ts'
import type { PlacedFinding } from '../../report/jobs-answer.ts'
import { judgeJob } from '../job/judge-job.ts'
import type { Candidate } from './candidate.ts'

/** What is said of a job by every rule that was asked, under the thing and the rule. */
export type Verdicts = ReadonlyMap<string, PlacedFinding>

/** The verdicts of a job; undefined where it could not be read or lies outside a range. */
export function verdictsOf(said: Said): Verdicts | undefined {
  const { errors, findings } = judgeJob('', textOf(said))
  return errors.length > 0 ? undefined : new Map(findings.map(finding => [`${finding.thing} ${finding.rule}`, finding]))
}

/** The job with a field put in, and with what must stand beside it. */
export function saidWithField(said: Said, { path, beside }: Candidate, text: string): Said {
  const whole = beside.reduce((job, one) => (isSaid(job, one.path) ? job : saidWith(job, one.path, one.text)), said)
  return saidWith(whole, path, text)
}

export function unjudged(verdicts: Verdicts): readonly string[] {
  return [...verdicts].flatMap(([key, { verdict }]) => (verdict === 'not-judged' ? [key] : []))
}
