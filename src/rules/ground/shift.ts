import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, type Limit, notJudged } from '../judge.ts'
import { type Unsure, unlessFailed } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly groundPoints: readonly { readonly point: string; readonly shiftV: Bounded }[]
  readonly limit: Limit
  /** Why nobody knows what flows there with every load on; left out where it is known. */
  readonly unsure?: Unsure | null
}

/** Whether the return of this circuit lifts the ground of others. */
export const shift: Rule<Subject> = {
  id: 'ground/shift',
  question: 'does every ground point stay near 0 V while the loads are on?',
  why: 'A sender that is grounded where a heater comes back reads the heater as well.',
  change: 'bring the return of the load to the 0 V point by a wire of its own, or make the shared joint better',
  source: SOURCES['workshop-drop'],
  judge: ({ groundPoints, limit, unsure }) => {
    const worst = groundPoints.toSorted((a, b) => b.shiftV.high - a.shiftV.high)[0]
    if (worst === undefined) return unlessFailed(notJudged('circuit.runs', 'draw the return of each load down to the 0 V point'), unsure)
    const facts = fact('shiftV', { says: `voltage of ${worst.point} against 0 V`, symbol: 'U', source: SOURCES.kirchhoff })
    return unlessFailed(atMost(facts, worst.shiftV, limit), unsure)
  }
}
