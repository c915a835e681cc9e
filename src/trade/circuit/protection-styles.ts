import { HYDRAULIC_MAGNETIC, IEC_60898, THERMAL, THERMAL_MAGNETIC } from './breaker-styles.ts'
import { BLADE, BLADE_LARGE, BLADE_MINI } from './fuse-blade.ts'
import { GLASS } from './fuse-glass.ts'
import type { ProtectionStyle, StyleId } from './protection-style.ts'

export const PROTECTION_STYLES: readonly ProtectionStyle[] = [
  BLADE,
  BLADE_MINI,
  BLADE_LARGE,
  GLASS,
  THERMAL,
  IEC_60898,
  HYDRAULIC_MAGNETIC,
  THERMAL_MAGNETIC
]

/** What is on a mark and in no series is often misread; null where it is in it, or where no series is known. */
export function offSeries(id: StyleId, ratingA: number): string | null {
  const { says, ratingsA } = styleOf(id)
  if (ratingsA.length === 0 || ratingsA.includes(ratingA)) return null
  return `no ${says} of ${ratingA} A stands in the series: ${ratingsA.join(', ')} A`
}

export function styleOf(id: StyleId): ProtectionStyle {
  return PROTECTION_STYLES.find(style => style.id === id)!
}
