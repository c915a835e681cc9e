import type { Answer } from '../report/answer.ts'
import { worstOf } from '../rules/finding.ts'
import type { Shell } from './describe.ts'

/** 2 where words or a file could not be read, 1 where something fails (with `--strict`, is less than a pass), else 0. */
export function exitOf({ errors = [], findings }: Pick<Answer, 'errors' | 'findings'>, { strict }: Pick<Shell, 'strict'>): number {
  if (errors.length > 0) return 2
  const worst = worstOf(findings.map(({ verdict }) => verdict))
  return worst === 'fail' || (strict && worst !== 'pass') ? 1 : 0
}
