import type { Source } from '../../formula/source.ts'

export type StyleId = 'blade' | 'blade-mini' | 'blade-large' | 'glass' | 'thermal' | 'iec-60898' | 'hydraulic-magnetic' | 'thermal-magnetic'

/** One point of the band: at this multiple of the rating it opens no sooner than the one and no later than the other. */
export interface Gate {
  readonly overRatio: number
  /** Null where only the other side is published. Infinite where it carries for good. */
  readonly shortestS: number | null
  readonly longestS: number | null
  readonly source: Source
}

/** How much of the rating may flow on and on, at a surrounding temperature. */
export interface LoadRow {
  readonly ambientC: number
  readonly loadPercent: number
  /** For this rating alone; null for every other. */
  readonly ratingA: number | null
  readonly source: Source
}

export interface BreakingVolts {
  readonly sureV: number
  readonly mostV: number
}

/** Largest fault current it can open, up to a rating. */
export interface BreakingRow {
  readonly greatestRatingA: number
  readonly breakingA: number
  /** Direct voltages that it is stated for: the one that every such part has, and the highest that any has. Null where none is printed. */
  readonly volts: BreakingVolts | null
  readonly says: string
  readonly source: Source
}

/** What a maker prints of one rating. */
export interface SheetRow {
  readonly ratingA: number
  readonly coldOhm: number | null
  /** At rated current, warm. */
  readonly dropV: number | null
  readonly meltingA2S: number | null
  readonly source: Source
}

export interface ProtectionStyle {
  readonly id: StyleId
  readonly kind: 'fuse' | 'breaker'
  readonly says: string
  readonly ratingsA: readonly number[]
  readonly ratingsSource: Source
  /** Empty where no band is published: then nothing is said of opening times. */
  readonly gates: readonly Gate[]
  readonly gatesSays: string
  /** What the quick edge does past its last gate: on at constant I²t or steeper, or not known. */
  readonly quickEdge: 'goes on' | 'unknown'
  /** What the slow edge does past its last gate: no slower than constant I²t from a gate of seconds, or not known. */
  readonly slowEdge: 'goes on' | 'unknown'
  readonly loads: readonly LoadRow[]
  readonly breaking: readonly BreakingRow[]
  readonly sheet: readonly SheetRow[]
}

/** A part that carries this for good does not open at all. */
export const CARRIES_S = Number.POSITIVE_INFINITY
