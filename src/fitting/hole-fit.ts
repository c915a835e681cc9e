import type { Given, Plain } from '../formula/given.ts'
import { type Hole, hole } from '../trade/hole/hole.ts'
import type { Rim } from '../trade/hole/neck-rim.ts'
import { type Seat, seat } from '../trade/hole/seat.ts'

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
  /** Plain length of the part under its shoulder; null where nobody told it: then it is taken as threaded up to there. */
  readonly undercutMm: Given | null
  /** Its neck, where that does not go between the threads of the hole. */
  readonly rim: Rim | null
}

/** Hole, then seat on the thread that the last tap leaves: bounds run through the whole chain. */
export function holeFit(fit: Plain<HoleFit>) {
  const holeResults = hole(fit.hole)
  const seated = seatIn(fit, holeResults)
  return { hole: holeResults, seat: seated === null ? null : seat(seated) }
}

/** The part in the hole that was opened for it; null where its thread or that of the hole is not known. */
export function seatIn(
  { hole: { pitchMm }, part }: Plain<HoleFit>,
  { taps, fullDiameterDepthMm }: ReturnType<typeof hole>
): Plain<Seat> | null {
  const { threadLengthMm, overallMm, stack, crushMm, mouthMm, undercutMm, rim } = part
  const threadDepthMm = taps.at(-1)?.threadDepthMm
  if (threadLengthMm === null || threadDepthMm === undefined) return null
  // The end of the part meets at the latest what is drilled to full diameter: the drill's point beyond it is not counted on.
  const floor = overallMm === null ? null : { overallMm, floorDepthMm: fullDiameterDepthMm }
  return { pitchMm, threadLengthMm, threadDepthMm, stack, crushMm, floor, mouthMm, undercutMm, rim, needMm: null, clocking: null }
}
