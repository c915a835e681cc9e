import type { BreakingRow, BreakingVolts, ProtectionStyle } from './protection-style.ts'

/** The largest current that a protector of this rating can open. Undefined where nothing is published: then it stands on the part. */
export function breakingCapacity(style: ProtectionStyle, ratingA: number): BreakingRow | undefined {
  return style.breaking.find(row => ratingA <= row.greatestRatingA)
}

interface Breaking {
  readonly breakingA: number | null
  readonly breakingSays: string
  readonly breakingV: BreakingVolts | null
}

/** What it can open, and at what voltage, as it is judged. */
export function breakingOf(style: ProtectionStyle, ratingA: number): Breaking {
  const row = breakingCapacity(style, ratingA)
  return {
    breakingA: row?.breakingA ?? null,
    breakingSays: row?.says ?? 'not published for the style: it stands on the part',
    breakingV: row?.volts ?? null
  }
}
