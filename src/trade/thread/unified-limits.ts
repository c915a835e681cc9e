import type { SourceId } from '../../formula/source.ts'
import { unifiedPitchDiameterMm } from './unified-basic.ts'
import type { UnifiedClass } from './unified-class.ts'
import { holeLimits } from './unified-hole-limits.ts'
import { screwLimits } from './unified-screw-limits.ts'
import type { UnifiedThread } from './unified-series.ts'
import { unifiedPitchToleranceMm } from './unified-tolerance.ts'

export interface Span {
  readonly minMm: number
  readonly maxMm: number
}

export interface UnifiedInternalLimits {
  readonly minor: Span
  readonly pitchDiameter: Span
  /** The hole's major diameter has a least value only: the tap gives the rest. */
  readonly major: { readonly minMm: number }
  readonly source: SourceId
}

export interface UnifiedExternalLimits {
  readonly major: Span
  readonly pitchDiameter: Span
  readonly source: SourceId
}

/** What the limits of every class start from. */
export interface LimitBase {
  readonly thread: UnifiedThread
  readonly pitchDiameterMm: number
  /** Pitch diameter tolerance of class 2A, unrounded. */
  readonly tolerance2AMm: number
}

/** Limits of size by ASME B1.1, each term rounded in inches as the standard rounds it, then times 25.4. */
export function unifiedLimits({ thread, toleranceClass }: { readonly thread: UnifiedThread; readonly toleranceClass: UnifiedClass }): {
  readonly internal: UnifiedInternalLimits
  readonly external: UnifiedExternalLimits
} {
  const base = { thread, pitchDiameterMm: unifiedPitchDiameterMm(thread), tolerance2AMm: tolerance2AMm(thread) }
  return { internal: holeLimits(base, toleranceClass.internal.name), external: screwLimits(base, toleranceClass.external.name) }
}

/** The standard reckons with an engagement of one diameter, in the extra fine series with nine pitches. */
function tolerance2AMm({ majorMm, pitchMm, series }: UnifiedThread): number {
  const engagementMm = series === 'UNEF' ? 9 * pitchMm : majorMm
  return unifiedPitchToleranceMm({ majorMm, engagementMm, pitchMm })
}
