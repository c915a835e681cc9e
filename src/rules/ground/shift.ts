import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, figure, type Limit, notJudged, plainly } from '../judge.ts'
import { type Unsure, unlessFailed } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'

interface GroundPoint {
  readonly point: string
  readonly shiftV: Bounded
  /** The load that alone comes back there, by a wire of its own. */
  readonly alone?: string | undefined
}

interface Subject {
  readonly groundPoints: readonly GroundPoint[]
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
    if (groundPoints.length === 0)
      return unlessFailed(notJudged('circuit.runs', 'draw the return of each load down to the 0 V point'), unsure)
    return unlessFailed(judged(groundPoints, limit), unsure)
  }
}

function judged(groundPoints: readonly GroundPoint[], limit: Limit): Judged {
  const worst = groundPoints.reduce((most, one) => (one.shiftV.high > most.shiftV.high ? one : most))
  const facts = fact('shiftV', { says: `voltage of ${worst.point} against 0 V`, symbol: 'U', source: SOURCES.kirchhoff })
  if (groundPoints.some(({ alone = null }) => alone === null)) return atMost(facts, worst.shiftV, limit)
  return plainly(
    'pass',
    `${figure(worst.shiftV.high, facts)} at ${worst.point}, where ${worst.alone} alone comes back by a wire of its own`
  )
}
