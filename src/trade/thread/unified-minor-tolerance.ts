import type { InternalClass } from './unified-class.ts'
import type { UnifiedThread } from './unified-series.ts'
import * as tolerance from './unified-tolerance.ts'

const QUARTER_INCH_MM = 6.35

/** Minor diameter tolerance of an internal thread in mm, before it is rounded. */
export function internalMinorToleranceMm({ majorMm, pitchMm, tpiCount }: UnifiedThread, fit: InternalClass): number {
  if (fit === '3B') return within(least3BMm({ pitchMm, tpiCount }), { majorMm, pitchMm })
  const leastMm = tolerance.unifiedMinorToleranceMm({ pitchMm })
  return majorMm < QUARTER_INCH_MM ? within(leastMm, { majorMm, pitchMm }) : leastMm
}

function least3BMm({ pitchMm, tpiCount }: { pitchMm: number; tpiCount: number }): number {
  return tpiCount >= 13
    ? tolerance.unifiedMinorTolerance3BLeastMm({ pitchMm })
    : tolerance.unifiedMinorTolerance3BLeastCoarseMm({ pitchMm })
}

function within(leastMm: number, size: { majorMm: number; pitchMm: number }): number {
  const mostMm = tolerance.unifiedMinorToleranceMostMm({ pitchMm: size.pitchMm })
  return Math.min(Math.max(tolerance.unifiedMinorToleranceBySizeMm(size), leastMm), mostMm)
}
