import type { Source } from '../../formula/source.ts'
import { type PracticeName, perPractice } from '../../trade/practice-names.ts'
import { SUPPLY_FIGURES } from '../../trade/supply/margin.ts'

export interface HoldLimit {
  readonly timeS: number
  readonly says: string
  readonly source: Source
}

const { leastS, says, source } = SUPPLY_FIGURES.batteryAlone

/** How long the battery alone must last, where a practice says so. */
export const HOLD_LIMITS: { readonly [N in PracticeName]: HoldLimit | null } = perPractice<HoldLimit | null>(null, {
  aircraft: { timeS: leastS, says, source }
})
