import type { Result } from '../../report/answer.ts'
import type { HoleInWork, JudgedJob } from '../job/judged-job.ts'

/** A tap of the sequence, and what was worked out for it. */
export interface CutTap {
  readonly name: string
  readonly turns: Result
  /** Face to its last full thread. */
  readonly depth: Result | undefined
}

/** The taps of a hole in the order of use: those of the job, or the usual set. */
export function tapsOf({ place, result }: HoleInWork, { answer }: JudgedJob): readonly CutTap[] {
  const before = `${place}:hole.turns.`
  return answer.results
    .filter(({ id }) => id.startsWith(before))
    .map(turns => ({ name: turns.id.slice(before.length), turns }))
    .map(({ name, turns }) => ({ name, turns, depth: result(`hole.thread-depth.${name}`) }))
}
