import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { clockLeftDeg, clockShimMm, clockTurnDeg } from '../../trade/hole/clocking.ts'
import { atLeast, figure, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** What lies under the shoulder, and the least that works. */
  readonly stackMm: Bounded
  readonly leastStackMm: Bounded
  /** What else may stop the part before its shoulder lands, and is not known: a thinner stack may not do. */
  readonly unknown: readonly string[]
  readonly clock: { readonly turnDeg: Bounded; readonly leftDeg: Bounded; readonly shimMm: Bounded; readonly thinnerMm: Bounded } | null
}

/** Whether the connector can point the way it should with a torque inside its band. */
export const connectorMisclocked: Rule<Subject> = {
  id: 'seat/connector-misclocked',
  question: 'does the turn that the torque band allows bring the connector where it should point?',
  why: 'A connector pulled round beyond its torque strips the casting; backed off, the part is loose.',
  change: 'shim the shoulder, or let the cable come another way; never back it off from its torque',
  source: SOURCES.practice,
  judge: ({ clock, stackMm, leastStackMm, unknown }) => {
    if (clock === null) return notJudged('clock-now', 'where the connector points at the lowest torque')
    const { turnDeg, leftDeg, shimMm, thinnerMm } = clock
    const spareMm = stackMm.low - Math.max(0, leastStackMm.high)
    const where = unknown.length === 0 ? '' : ` where the least stack allows it (not known: ${unknown.join(', ')})`
    const thinner = thinnerMm.high > spareMm ? '' : `, or ${figure(thinnerMm.value, clockShimMm)} less${where},`
    const more = `${figure(shimMm.value, clockShimMm)} more under the shoulder${thinner}`
    const shim = `${more} lets it point there at the lowest torque; never back it off`
    const says = `${figure(turnDeg.value, clockTurnDeg)} to turn from the lowest torque on, ${figure(leftDeg.value, clockLeftDeg)} left of what the band allows`
    return turnDeg.low < leftDeg.low
      ? { ...atLeast({ ...clockTurnDeg, says: 'turn still to go' }, turnDeg, { value: 0 }, says), change: shim }
      : { ...atLeast(clockLeftDeg, leftDeg, { value: 0 }, says), change: shim }
  }
}
