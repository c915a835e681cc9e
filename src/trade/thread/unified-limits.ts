import type { BasicSizes } from './basic.ts'
import type { Limits } from './limits.ts'
import type { UnifiedClass } from './unified-class.ts'
import { holeLimits } from './unified-hole-limits.ts'
import { screwLimits } from './unified-screw-limits.ts'
import type { UnifiedThread } from './unified-series.ts'
import { unifiedPitchToleranceMm } from './unified-tolerance.ts'

/** What the limits of every class start from. */
export interface LimitBase {
  readonly thread: UnifiedThread
  readonly pitchDiameterMm: number
  readonly minorDiameterMm: number
  /** Pitch diameter tolerance of class 2A, unrounded. */
  readonly tolerance2AMm: number
}

/** Limits of size by ASME B1.1, each term rounded in inches as the standard rounds it, then times 25.4. */
export function unifiedLimits(x: {
  readonly thread: UnifiedThread
  readonly toleranceClass: UnifiedClass
  readonly basics: Pick<BasicSizes, 'pitchDiameterMm' | 'minorDiameterMm'>
}): Limits {
  const { thread, toleranceClass, basics } = x
  const base = { ...basics, thread, tolerance2AMm: tolerance2AMm(thread) }
  return { internal: holeLimits(base, toleranceClass.internal.name), external: screwLimits(base, toleranceClass.external.name) }
}

/** The standard reckons with an engagement of one diameter, in the extra fine series with nine pitches. */
function tolerance2AMm({ majorMm, pitchMm, series }: UnifiedThread): number {
  const engagementMm = series === 'UNEF' ? 9 * pitchMm : majorMm
  return unifiedPitchToleranceMm({ majorMm, engagementMm, pitchMm })
}
