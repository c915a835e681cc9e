import type { BreakingRow, ProtectionStyle } from './protection-style.ts'

/** The largest current that a protector of this rating can open. Undefined where nothing is published: then it stands on the part. */
export function breakingCapacity(style: ProtectionStyle, ratingA: number): BreakingRow | undefined {
  return style.breaking.find(row => ratingA <= row.greatestRatingA)
}
