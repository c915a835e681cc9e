import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { ratedSharePercent as facts } from '../../trade/circuit/rating-share.ts'
import { atMost, doubted, neverFails } from '../judge.ts'
import type { Rule } from '../rule.ts'

const RATED = 100

/** 16 V where 12 V is marked, 32 V where 24 V is: (4/3)² of the power. No equipment is tried above that. */
const TRIED = { value: (100 * 16) / 9, source: SOURCES['iso-16750-2'], reason: 'a third above the voltage that is marked' }

/** Somewhat above its rated power is worth a word, no fail: what it stands there only its maker knows. */
interface Subject {
  readonly ratedSharePercent: Bounded
  /** Nobody spoke of a bus that is high. */
  readonly steadyHigh: boolean
}

const STEADY = 'source.high is not given: this is reckoned at the bus as given'

export const aboveRating: Rule<Subject> = {
  id: 'heater/above-rating',
  question: 'does the heater stay at or below its rated power at the highest bus?',
  why: 'At 28 V a heater for 24 V gives a third more than its mark: it ages faster and the metal gets hotter.',
  change: 'ask the maker what voltage the heater stands for good, or take one rated for the highest bus',
  source: SOURCES.ohm,
  judge: ({ ratedSharePercent, steadyHigh }) => {
    if (!(ratedSharePercent.high <= TRIED.value)) {
      const tried = atMost(facts, ratedSharePercent, TRIED)
      if (tried.verdict === 'fail') return tried
    }
    return doubted(neverFails(atMost(facts, ratedSharePercent, { value: RATED })), steadyHigh ? [STEADY] : [])
  }
}
