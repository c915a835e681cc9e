import type { Result } from '../../report/answer.ts'
import type { Figure } from '../../report/plan/plan.ts'
import type { HoleInWork } from '../job/judged-job.ts'
import { atLow, ofNumber } from './figure.ts'

/** A tap of the sequence, and what is ordered of it: like the stop, worked out at the worst end, so that it is right in the shallowest hole. */
export interface CutTap {
  readonly name: string
  /** Threads cut away at its front, in pitches. */
  readonly chamferTurns: number
  readonly turns: Figure | null
  /** Face to its end, so many turns in: the smallest thread of its chamfer. */
  readonly end: Figure | null
  /** Face to its last full thread. */
  readonly thread: Figure | null
}

/** The taps of a hole in the order of use: those of the job, or the usual set. */
export function tapsOf({ fit, part, result }: HoleInWork): readonly CutTap[] {
  return (fit?.hole.taps ?? []).map(({ name, chamferTurns }) => ({
    name,
    chamferTurns: chamferTurns.value,
    ...ordered(name, part.thread.pitchMm, {
      turns: result(`hole.turns.${name}`),
      depth: result(`hole.thread-depth.${name}`)
    })
  }))
}

function ordered(
  name: string,
  pitchMm: number,
  { turns, depth }: { readonly turns: Result | undefined; readonly depth: Result | undefined }
): Pick<CutTap, 'turns' | 'end' | 'thread'> {
  const count = atLow(turns, 'turns-down', `turns, ${name} tap`)
  return {
    turns: count,
    end: count === null ? null : ofNumber('endMm', `end of the ${name} tap below the face`, count.value * pitchMm, 'depth-down'),
    thread: atLow(depth, 'depth-down', `full thread after the ${name} tap`)
  }
}
