import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { dropPercent, dropV } from '../../trade/circuit/feed.ts'
import { atMost, type Limit, notJudged } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly dropV: Bounded | null
  readonly dropPercent: Bounded | null | undefined
  readonly limit: (Limit & { readonly unit: '%' | 'V' }) | null
  /** Where a limit can be given; left out in a job. */
  readonly limitBy?: string
  /** Why no drop of it can be told; left out where one can. */
  readonly unsure?: Unsure | null
}

const NO_LIMIT = 'the practice has no limit at this voltage: give one with its reason'

/** Whether too much of the voltage is lost on the way there and back. */
export const tooMuch: Rule<Subject> = {
  id: 'drop/too-much',
  question: 'is the drop there and back within the limit of the practice?',
  why: 'A heater gives less with the square of the voltage, and what is lost warms wire and joints.',
  change: 'use thicker or shorter wire, or better joints',
  source: SOURCES.practice,
  judge: ({ dropV: lostV, dropPercent: lostPercent, limit, unsure, limitBy = 'limits.drop' }) => {
    if (unsure) return unsureOf(unsure)
    if (lostV === null) return notJudged('circuit', 'draw every run from the source to the load and back')
    if (limit === null) return notJudged(limitBy, NO_LIMIT)
    if (limit.unit === 'V') return atMost(dropV, lostV, limit)
    return lostPercent === null || lostPercent === undefined
      ? notJudged('bus', 'measure at the source with the machine running')
      : atMost(dropPercent, lostPercent, limit)
  }
}
