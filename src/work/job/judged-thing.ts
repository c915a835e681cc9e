import type { Result } from '../../report/answer.ts'
import type { Finding } from '../../rules/finding.ts'

/** What is said of one thing of a job. */
export interface JudgedThing {
  readonly results: readonly Result[]
  readonly findings: readonly Finding[]
  /** Sentences that belong to no rule. */
  readonly cautions?: readonly string[]
}

/** Results under the name of the quick command that gives them too. */
export function prefixed(command: string, results: readonly Result[]): readonly Result[] {
  return results.map(result => ({ ...result, id: `${command}.${result.id}` }))
}
