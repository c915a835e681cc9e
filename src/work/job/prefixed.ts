import type { Result } from '../../report/answer.ts'

/** Results under the name of the quick command that they have theirs from. */
export function prefixed(command: string, results: readonly Result[]): readonly Result[] {
  return results.map(result => ({ ...result, id: `${command}.${result.id}` }))
}
