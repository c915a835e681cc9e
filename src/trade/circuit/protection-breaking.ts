import type { BreakingRow, BreakingVolts, ProtectionStyle } from './protection-style.ts'

interface Rated {
  readonly ratingA: number
  /** Printed on the part, for the voltage of the bus; null where nobody gave it. */
  readonly breakingA: number | null
}

/** The largest current that a protector of this rating can open. Undefined where nothing is published: then it stands on the part. */
export function breakingCapacity(style: ProtectionStyle, ratingA: number): BreakingRow | undefined {
  return style.breaking.find(row => ratingA <= row.greatestRatingA)
}

/** What is printed on the part, else what is published of its style; null where nothing is. */
export function breaksA(style: ProtectionStyle, { ratingA, breakingA }: Rated): number | null {
  return breakingA ?? breakingCapacity(style, ratingA)?.breakingA ?? null
}

interface Breaking {
  readonly breakingA: number | null
  readonly breakingSays: string
  readonly breakingV: BreakingVolts | null
  /** Whether it was read on the part, for the voltage of the bus. */
  readonly isPrinted: boolean
}

/** What was read on a part of which nothing else is known. */
export function printedOf(breakingA: number): Breaking {
  return { breakingA, breakingSays: 'as given for the bus', breakingV: ANY, isPrinted: true }
}

const ANY: BreakingVolts = { sureV: Number.POSITIVE_INFINITY, mostV: Number.POSITIVE_INFINITY }

/** What it can open, and at what voltage, as it is judged. A figure that was read on the part leaves the voltage that such parts are made for. */
export function breakingOf(style: ProtectionStyle, rated: Rated): Breaking {
  const row = breakingCapacity(style, rated.ratingA)
  const volts = row?.volts ?? null
  if (rated.breakingA !== null) return { ...printedOf(rated.breakingA), breakingV: volts ?? ANY }
  return {
    breakingA: row?.breakingA ?? null,
    breakingSays: row?.says ?? 'not published for the style: it stands on the part',
    breakingV: volts,
    isPrinted: false
  }
}
