import { answered } from '../../formula/answered.ts'
import { fact } from '../../formula/formula.ts'
import type { Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { coupledCurve } from './coupled-curve.ts'
import type { TwoNode } from './two-node.ts'

const STEPS = 120

export const steppedTimeS = fact('steppedTimeS', {
  says: 'the same with film and radiation as they change on the way',
  symbol: 't',
  source: SOURCES['heat-balance']
})

/** When the casting passes its target, with films as it warms: a second opinion beside a time by films of the end. Null where it does not pass. */
export function steppedToTargetS(x: Plain<TwoNode>, expectedS: number): number | null {
  const { targetC } = x
  if (targetC === null || !Number.isFinite(expectedS) || expectedS === 0) return null
  const course = courseOf(x, 2 * expectedS)
  const after = course.findIndex(({ castingC }) => castingC >= targetC)
  const [before, there] = [course[after - 1], course[after]]
  if (before === undefined || there === undefined) return null
  const share = (targetC - before.castingC) / (there.castingC - before.castingC)
  return before.timeS + share * (there.timeS - before.timeS)
}

function courseOf(x: Plain<TwoNode>, lastS: number) {
  // Films may leave their range on the way, though not at the end.
  return answered(() => coupledCurve(x, { lastS, stepCount: STEPS })) ?? []
}
