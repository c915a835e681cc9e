import type { Given, Plain } from '../formula/given.ts'
import { type Hole, hole } from '../trade/hole/hole.ts'
import { seat } from '../trade/hole/seat.ts'

/** One hole of a job with the part that goes into it: what is not known is null. */
export interface HoleFit {
  readonly hole: Hole
  readonly part: FittedPart
}

export interface FittedPart {
  readonly threadLengthMm: Given | null
  readonly overallMm: Given | null
  readonly stack: readonly { readonly thicknessMm: Given }[]
  readonly crushMm: Given
  /** Depth of the countersink at the mouth. */
  readonly mouthMm: Given
}

/** Hole, then seat on the thread that the last tap leaves: bounds run through the whole chain. */
export function holeFit({ hole: planned, part }: Plain<HoleFit>) {
  const holeResults = hole(planned)
  const { taps, fullDiameterDepthMm } = holeResults
  const { pitchMm } = planned
  const { threadLengthMm, overallMm, stack, crushMm, mouthMm } = part
  const threadDepthMm = taps.at(-1)?.threadDepthMm
  if (threadLengthMm === null || threadDepthMm === undefined) return { hole: holeResults, seat: null }
  // The end of the part meets at the latest what is drilled to full diameter: the drill's point beyond it is not counted on.
  const floor = overallMm === null ? null : { overallMm, floorDepthMm: fullDiameterDepthMm }
  return {
    hole: holeResults,
    seat: seat({ pitchMm, threadLengthMm, threadDepthMm, stack, crushMm, floor, mouthMm, needMm: null, clocking: null })
  }
}
