import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { clockLeftDeg, clockShimMm, clockTurnDeg } from '../../trade/hole/clocking.ts'
import { atLeast, figure, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly clock: { readonly turnDeg: Bounded; readonly leftDeg: Bounded; readonly shimMm: Bounded; readonly thinnerMm: Bounded } | null
}

/** Whether the connector can point the way it should with a torque inside its band. */
export const connectorMisclocked: Rule<Subject> = {
  id: 'seat/connector-misclocked',
  question: 'does the turn that the torque band allows bring the connector where it should point?',
  why: 'A connector pulled round beyond its torque strips the casting; backed off, the part is loose.',
  change: 'shim the shoulder, or let the cable come another way; never back it off from its torque',
  source: SOURCES.practice,
  judge: ({ clock }) => {
    if (clock === null) return notJudged('clock-now', 'where the connector points at the lowest torque')
    const { turnDeg, leftDeg, shimMm, thinnerMm } = clock
    const [more, less] = [figure(shimMm.value, clockShimMm), figure(thinnerMm.value, clockShimMm)]
    const shim = `${more} more under the shoulder, or ${less} less where the least stack allows it, lets it point there at the lowest torque; never back it off`
    const says = `${figure(turnDeg.value, clockTurnDeg)} to turn from the lowest torque on, ${figure(leftDeg.value, clockLeftDeg)} left of what the band allows`
    return turnDeg.low < leftDeg.low
      ? { ...atLeast({ ...clockTurnDeg, says: 'turn still to go' }, turnDeg, { value: 0 }, says), change: shim }
      : { ...atLeast(clockLeftDeg, leftDeg, { value: 0 }, says), change: shim }
  }
}
