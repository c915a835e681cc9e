import type { Candidate, Side } from './identify-crest.ts'
import { type Tell, tellApart } from './identify-tell.ts'

/** Closer than this, two threads are taken for each other in the hand or in a box (common practice). */
const DIAMETER_RATIO = 0.07
const PITCH_RATIO = 0.25

/** The other threads that this one is taken for, nearest first, each with what tells them apart. */
export function confusable({
  thread,
  candidates,
  side
}: {
  thread: Candidate
  candidates: readonly Candidate[]
  side: Side
}): readonly Tell[] {
  return candidates
    .filter(other => other.name !== thread.name)
    .map(other => ({ other, apart: apart(thread, other) }))
    .filter(({ apart: { diameterRatio, pitchRatio } }) => diameterRatio < DIAMETER_RATIO && pitchRatio < PITCH_RATIO)
    .sort((a, b) => distance(a.apart) - distance(b.apart))
    .map(({ other }) => tellApart({ first: thread, second: other, side }))
}

interface Apart {
  readonly diameterRatio: number
  readonly pitchRatio: number
}

/** As a share of the larger, so that it is the same from either side. */
function apart(a: Candidate, b: Candidate): Apart {
  return {
    diameterRatio: Math.abs(a.majorMm - b.majorMm) / Math.max(a.majorMm, b.majorMm),
    pitchRatio: Math.abs(a.pitchMm - b.pitchMm) / Math.max(a.pitchMm, b.pitchMm)
  }
}

function distance({ diameterRatio, pitchRatio }: Apart): number {
  return diameterRatio / DIAMETER_RATIO + pitchRatio / PITCH_RATIO
}
