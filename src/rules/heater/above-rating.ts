import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { ratedSharePercent as facts } from '../../trade/circuit/rating-share.ts'
import { atMost, neverFails } from '../judge.ts'
import type { Rule } from '../rule.ts'

const RATED = 100

/** A heater above its rated power is worth a word, never a fail: only its maker knows what it stands. */
export const aboveRating: Rule<{ readonly ratedSharePercent: Bounded }> = {
  id: 'heater/above-rating',
  question: 'does the heater stay at or below its rated power at the highest bus?',
  why: 'At 28 V a heater for 24 V gives a third more than its mark: it ages faster and the metal gets hotter.',
  change: 'ask the maker what voltage the heater stands for good, or take one rated for the highest bus',
  source: SOURCES.ohm,
  judge: ({ ratedSharePercent }) => neverFails(atMost(facts, ratedSharePercent, { value: RATED }))
}
