import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { cutMarginK as cut, holdMarginK as facts } from '../../trade/heat/heating.ts'
import { atLeast, doubted, figure } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import { partTimeDoubts } from '../part-time.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Hold {
  readonly holdMarginK: Bounded
  /** How far above the target a thermostat takes the power off, where there is one. */
  readonly cutMarginK: Bounded | null
  /** Heaters that are on for a part of the time. */
  readonly partTime?: readonly string[]
}

interface Subject extends SteadyBus {
  readonly hold: Missing | Hold
}

/** Whether the block settles above its target. What settles just there reaches it in the end, that is never. */
export const neverReaches: Rule<Subject> = {
  id: 'warm/never-reaches',
  question: 'does the metal settle above its target, with all against it?',
  why: 'Below that the heater runs for ever and the metal stays wet, frosted or stiff with cold.',
  change: 'fit more power, keep the moving air off, insulate, or ask for less',
  source: SOURCES['heat-balance'],
  judge: ({ hold, steadyBus }) => {
    if (isMissing(hold)) return notJudgedFor(hold)
    const { holdMarginK, cutMarginK, partTime } = hold
    if (cutMarginK !== null && cutMarginK.low <= 0)
      return atLeast(cut, cutMarginK, { value: 0 }, 'the thermostat opens before the target is reached')
    const { value, low, high } = holdMarginK
    const end = low === high ? '' : ' at the worst end'
    const gap = figure(Math.abs(low), facts)
    const says =
      low > 0 ? `it settles ${gap} above the target${end}` : `the target is ${word(value)} reached: it settles ${gap} below it${end}`
    return steadily(doubted(atLeast(facts, holdMarginK, { value: 0 }, says), partTimeDoubts(partTime)), { steadyBus })
  }
}

/** Nominally reached, at the worst end not. */
function word(nominalK: number): string {
  return nominalK > 0 ? 'not surely' : 'never'
}
