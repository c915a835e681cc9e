import type { SourceId } from '../../formula/source.ts'

export const DRILL_SETS = ['metric', 'fraction', 'number', 'letter'] as const
export type DrillSet = (typeof DRILL_SETS)[number]

/** A drill that some set has. */
export interface Drill {
  readonly set: DrillSet
  /** As one asks for it: `10.2 mm`, `7/16`, `#7`, `F`. */
  readonly name: string
  readonly diameterMm: number
  readonly source: SourceId
}

/** Two sizes closer than this are one: below anything a drill is ground to, above rounding. */
const SAME_MM = 1e-6

export function sameSize(aMm: number, bMm: number): boolean {
  return Math.abs(aMm - bMm) < SAME_MM
}
