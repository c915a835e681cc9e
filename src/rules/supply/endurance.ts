import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { showTime } from '../../quantity/show-time.ts'
import { marginA } from '../../trade/supply/margin.ts'
import { enduranceS as facts } from '../../trade/supply/peukert.ts'
import { atLeast, figure, notJudged } from '../judge.ts'
import { type Unsure, unlessFailed } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Null without a battery, or without a load. */
  readonly enduranceS: Bounded | null
  /** How long the battery alone must last; null where nobody said. */
  readonly hold: { readonly timeS: number; readonly says: string; readonly source: Source } | null
  readonly loadA: Bounded
  /** Why nobody knows what a load takes; left out where it is known. */
  readonly unsure?: Unsure | null
}

/** Whether the battery alone lasts as long as it must. */
export const endurance: Rule<Subject> = {
  id: 'supply/endurance',
  question: 'does the battery alone carry the loads as long as it must?',
  why: 'A generator stops far from home, and in the cold a battery holds half of what its label says.',
  change: 'switch loads off, or fit a larger battery',
  source: SOURCES.peukert,
  judge: ({ enduranceS, hold, loadA, unsure }) => {
    if (enduranceS === null) return notJudged('battery', 'read capacity and rated time on its label')
    if (hold === null) return notJudged('hold', 'say how long the battery alone must carry the loads')
    const lasts = Number.isFinite(enduranceS.low) ? showTime(enduranceS.low) : 'ever'
    const says = `the battery alone carries ${figure(loadA.high, marginA)} for ${lasts}; ${showTime(hold.timeS)} wanted (${hold.says})`
    return unlessFailed(atLeast(facts, enduranceS, { value: hold.timeS, source: hold.source }, says), unsure)
  }
}
