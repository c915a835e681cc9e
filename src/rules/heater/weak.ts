import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { powerW as facts } from '../../trade/circuit/load.ts'
import { atLeast, notJudged } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  readonly powerW: Bounded
  readonly leastPowerW: number | null
  /** Why nobody knows whether any power arrives; left out where it is known. */
  readonly unsure?: Unsure | null
}

/** Whether enough power arrives when the bus is low and the wire warm. */
export const weak: Rule<Subject> = {
  id: 'heater/weak',
  question: 'does the power that is needed arrive at the worst end?',
  why: 'Power goes with the square of voltage: a tenth lost on the way is a fifth of the power.',
  change: 'use thicker or shorter wire, better joints, or one of more power',
  source: SOURCES.ohm,
  judge: ({ powerW, leastPowerW, steadyBus, unsure }) => {
    if (unsure) return unsureOf(unsure)
    return leastPowerW === null
      ? notJudged('least-power', 'say what power is of use: by a warm-up calculation or a trial')
      : steadily(atLeast(facts, powerW, { value: leastPowerW }), { steadyBus })
  }
}
