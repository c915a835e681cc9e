import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { ratedSharePercent as facts } from '../../trade/circuit/rating-share.ts'
import { figure, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

const RATED = 100

/** A heater above its rated power is worth a word, never a fail: only its maker knows what it stands. */
export const aboveRating: Rule<{ readonly ratedSharePercent: Bounded }> = {
  id: 'heater/above-rating',
  question: 'does the heater stay at or below its rated power at the highest bus?',
  why: 'At 28 V a heater for 24 V gives a third more than its mark: it ages faster and the metal gets hotter.',
  change: 'ask the maker what voltage the heater stands for good, or take one rated for the highest bus',
  source: SOURCES.ohm,
  judge: ({ ratedSharePercent }) => judged(ratedSharePercent)
}

function judged({ high, highAt, shares }: Bounded): Judged {
  const verdict = high > RATED * (1 + 1e-9) ? 'caution' : 'pass'
  const says = `${facts.says} ${figure(high, facts)} at the worst end`
  return {
    ...plainly(verdict, says, shares[0]?.given.at ?? []),
    value: high,
    limit: RATED,
    margin: RATED - high,
    unit: '%',
    worstAt: highAt
  }
}
