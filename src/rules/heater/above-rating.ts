import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { ratedSharePercent as facts } from '../../trade/circuit/rating-share.ts'
import { atMost, neverFails } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

const RATED = 100

/** 16 V where 12 V is marked, 32 V where 24 V is: (4/3)² of the power. No equipment is tried above that. */
const TRIED = { value: (100 * 16) / 9, source: SOURCES['iso-16750-2'], reason: 'a third above the voltage that is marked' }

/** Somewhat above its rated power is worth a word, no fail: what it stands there only its maker knows. */
interface Subject extends SteadyBus {
  readonly ratedSharePercent: Bounded
  /** Whether its highest share is that with other loads switched off. */
  readonly othersOff?: boolean | undefined
}

export const aboveRating: Rule<Subject> = {
  id: 'heater/above-rating',
  question: 'does a heater, or another load that is rated for a voltage, stay at or below its rated power at the highest bus?',
  why: 'At 28 V what is marked 24 V takes a third more than its mark: it ages faster, and it and what is around it get hotter.',
  change: 'ask the maker what voltage it stands for good, or take one rated for the highest bus',
  source: SOURCES.ohm,
  judge: subject => {
    const judged = judgedShare(subject.ratedSharePercent)
    const told = subject.othersOff === true ? { ...judged, says: `${judged.says}; with every other load off` } : judged
    return steadily(told, { steadyHigh: subject.steadyHigh })
  }
}

function judgedShare(ratedSharePercent: Bounded): Judged {
  if (!(ratedSharePercent.high <= TRIED.value)) {
    const tried = atMost(facts, ratedSharePercent, TRIED)
    if (tried.verdict === 'fail') return tried
  }
  return neverFails(atMost(facts, ratedSharePercent, { value: RATED }))
}
