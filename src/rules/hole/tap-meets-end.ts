import { type Bounded, exactly } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { atLeast } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly fullDiameterDepthMm: Bounded
  readonly tapClearMm: Given
}

const facts = fact('tapRoomMm', {
  says: 'what is left of the clearance of the tap where the hole came out shallowest',
  symbol: 'c',
  source: SOURCES.geometry
})

/** Turns are counted, not felt: the clearance is all that stands between a hole that came out short and a broken tap. */
export const tapMeetsEnd: Rule<Subject> = {
  id: 'hole/tap-meets-end',
  question: 'is the clearance of the tap more than the hole may be short of its nominal depth?',
  why: 'A tap turned to the nominal count in a hole that came out short meets its end and breaks off in the casting.',
  change: 'give more tap-clear, or a stop with less error; count no more turns than those of the worst end',
  source: SOURCES.geometry,
  judge: ({ fullDiameterDepthMm, tapClearMm }) => atLeast(facts, leftOf(fullDiameterDepthMm, tapClearMm), { value: 0 })
}

/** Clearance and depth move each for itself, so their ends add up. */
function leftOf({ value, low, high, movers, hangsOn, turned }: Bounded, clearMm: Given): Bounded {
  return {
    ...exactly(clearMm.value),
    low: clearMm.low + (low - value),
    high: clearMm.high + (high - value),
    movers: clearMm.low < clearMm.high ? [...movers, clearMm] : movers,
    hangsOn: clearMm.assumed === undefined ? hangsOn : [...hangsOn, clearMm],
    turned
  }
}
