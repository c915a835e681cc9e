import type { Result } from '../../report/answer.ts'
import type { HoleInWork } from '../job/judged-job.ts'

/** A tap of the sequence, and what was worked out for it. */
export interface CutTap {
  readonly name: string
  /** Threads cut away at its front, in pitches. */
  readonly chamferTurns: number
  readonly turns: Result | undefined
  /** Face to its last full thread. */
  readonly depth: Result | undefined
}

/** The taps of a hole in the order of use: those of the job, or the usual set. */
export function tapsOf({ fit, result }: HoleInWork): readonly CutTap[] {
  return (fit?.hole.taps ?? []).map(({ name, chamferTurns }) => ({
    name,
    chamferTurns: chamferTurns.value,
    turns: result(`hole.turns.${name}`),
    depth: result(`hole.thread-depth.${name}`)
  }))
}
