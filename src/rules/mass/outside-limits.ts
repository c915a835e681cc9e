import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Span } from '../../quantity/parse-quantity.ts'
import { showApart } from '../../quantity/show.ts'
import { centreM as facts } from '../../trade/mass/moment.ts'
import { atLeast, atMost, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  /** The centre as it is, or with the loads that try the limits hardest. */
  readonly centres: readonly { readonly of: string; readonly centreM: Bounded }[]
  readonly limits: Span | null
}

/** Whether every centre lies between the forward and the rearward limit. */
export const outsideLimits: Rule<Subject> = {
  id: 'mass/outside-limits',
  question: 'does the centre of mass stay between its limits?',
  why: 'Outside them a machine loses grip, steering or stability, and its papers no longer hold.',
  change: 'move a part, add ballast, or carry less at that end, as the papers of the machine allow',
  source: SOURCES['weight-and-balance'],
  judge: ({ centres, limits }) => {
    if (limits === null) return notJudged('mass.limits', 'read the forward and the rearward limit in the papers of the machine')
    const judged = centres.map(({ of, centreM }) => nearer(of, centreM, limits))
    const worst = judged.reduce((a, b) => ((b.margin ?? 0) < (a.margin ?? 0) ? b : a))
    const others = judged.filter(one => one !== worst && one.verdict === 'fail')
    return { ...worst, says: [worst, ...others].map(({ says }) => says).join('; ') }
  }
}

/** The limit that is nearer. */
function nearer(of: string, centreM: Bounded, limits: Span): Judged {
  const forward = centreM.low - limits.low < limits.high - centreM.high
  const limit = forward ? limits.low : limits.high
  const [lies, nearest] = showApart(forward ? centreM.low : centreM.high, limit, 'arm')
  const [other] = showApart(forward ? limits.high : limits.low, limit, 'arm')
  const worst = `${lies} m${centreM.low === centreM.high ? '' : ' at the worst end'}`
  const both = forward ? `${nearest} m and ${other} m` : `${other} m and ${nearest} m`
  const says = `${of} lies at ${worst}; the limits are ${both}`
  return forward ? atLeast(facts, centreM, { value: limit }, says) : atMost(facts, centreM, { value: limit }, says)
}
