import type { Candidate, Side } from './identify-crest.ts'
import type { Span } from './limits.ts'

export interface Measured {
  /** Major diameter of a screw, minor diameter of a hole. */
  readonly measuredMm: number
  readonly side: Side
  readonly pitchMm?: number | undefined
  /** How far off the reading of the diameter may be. */
  readonly errorMm?: number | undefined
  /** How far off the pitch may be. */
  readonly pitchErrorMm?: number | undefined
}

export interface Fit<C extends Candidate = Candidate> {
  readonly candidate: C
  readonly band: Span
  /** Beyond the band of a sound thread: positive too large, negative too small, nought inside. */
  readonly offMm: number
  /** Measured pitch less pitch of the candidate; null where no pitch was given. */
  readonly pitchOffMm: number | null
  readonly verdict: 'fits' | 'fits if worn' | 'does not fit'
  /** Nought for a perfect fit, one at the edge of what the errors explain. */
  readonly misfitFactor: number
}

/** A caliper across crests, and a pitch counted over several threads (common practice). */
export const CALIPER_ERROR_MM = 0.03
export const PITCH_ERROR_MM = 0.03
/** Worn or bruised crests lose about a tenth of the pitch before the thread is plainly ruined (common practice). */
const WEAR_RATIO = 0.1

/** How well a measured thread agrees with one candidate. */
export function fitOf<C extends Candidate>(candidate: C, measured: Measured): Fit<C> {
  const { measuredMm, side, pitchMm, errorMm = CALIPER_ERROR_MM, pitchErrorMm = PITCH_ERROR_MM } = measured
  const band = candidate.crest[side]
  const offMm = beyond(measuredMm, soundBand(candidate, band, side))
  const pitchOffMm = pitchMm === undefined ? null : pitchMm - candidate.pitchMm
  const worn = side === 'external' ? offMm < 0 : offMm > 0
  const explainedMm = errorMm + (worn ? WEAR_RATIO * candidate.pitchMm : 0)
  const misfitFactor = Math.hypot(offMm / explainedMm, (pitchOffMm ?? 0) / pitchErrorMm)
  const pitchFits = pitchOffMm === null || Math.abs(pitchOffMm) <= pitchErrorMm
  const verdict = !pitchFits || Math.abs(offMm) > explainedMm ? 'does not fit' : Math.abs(offMm) <= errorMm ? 'fits' : 'fits if worn'
  return { candidate, band, offMm, pitchOffMm, verdict, misfitFactor }
}

/** Close classes reach the basic diameter, which the usual class stays clear of. */
function soundBand({ majorMm, minorMm }: Candidate, { minMm, maxMm }: Span, side: Side): Span {
  return side === 'external' ? { minMm, maxMm: Math.max(maxMm, majorMm) } : { minMm: Math.min(minMm, minorMm), maxMm }
}

function beyond(valueMm: number, { minMm, maxMm }: Span): number {
  return valueMm > maxMm ? valueMm - maxMm : Math.min(0, valueMm - minMm)
}
