import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { surfaceMarginK as facts } from '../../trade/heat/moist-air.ts'
import { atLeast, figure } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Margin extends SteadyBus {
  readonly surfaceMarginK: Bounded
  /** What the surface is, in words. */
  readonly of: string
  /** Which of the two points is the higher. */
  readonly governs: string
}

/** Whether water or frost settles on a surface. A margin is an estimate of the metal's temperature, and no word on ice in air or fuel. */
export const surfaceWet: Rule<{ readonly surface: Margin | Missing }> = {
  id: 'dew/surface-wet',
  question: 'does the surface stay above dew and frost point?',
  why: 'Below that, water or frost settles on it: it corrodes, it freezes up, it tracks over terminals.',
  change: 'warm the surface, dry the air, or keep the moist air away from it',
  source: SOURCES['wmo-8'],
  judge: ({ surface }) => {
    if (isMissing(surface)) return notJudgedFor(surface)
    const { surfaceMarginK, of, governs, steadyBus } = surface
    const { low, high } = surfaceMarginK
    const where = `${figure(Math.abs(low), facts)} ${low < 0 ? 'below' : 'above'} the ${governs}${low === high ? '' : ' at the worst end'}`
    const says = `${of} is ${where}: an estimate of the temperature of the metal`
    return steadily(atLeast(facts, surfaceMarginK, { value: 0 }, says), { steadyBus })
  }
}
