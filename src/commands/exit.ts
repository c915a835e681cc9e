import type { Answer } from '../report/answer.ts'
import type { JobAnswer } from '../report/jobs-answer.ts'
import { type Verdict, worstOf } from '../rules/finding.ts'
import type { Shell } from './describe.ts'

/** 2 where words or a file could not be read, 1 where something fails (with `--strict`, is less than a pass), else 0. */
export function exitOf({ errors = [], findings }: Pick<Answer, 'errors' | 'findings'>, { strict }: Pick<Shell, 'strict'>): number {
  if (errors.length > 0) return 2
  return exitOfVerdict(worstOf(findings.map(({ verdict }) => verdict)), strict)
}

/** The same of a job file, whose verdict is that of what was asked; 3 where this program failed at it. */
export function exitOfJob(
  { errors, verdict, failed }: Pick<JobAnswer, 'errors' | 'verdict' | 'failed'>,
  { strict }: Pick<Shell, 'strict'>
): number {
  if (failed) return 3
  return errors.length > 0 || verdict === null ? 2 : exitOfVerdict(verdict, strict)
}

function exitOfVerdict(verdict: Verdict, strict: boolean): number {
  return verdict === 'fail' || (strict && verdict !== 'pass') ? 1 : 0
}
