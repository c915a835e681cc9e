import type { Bounded } from '../../formula/bounds.ts'
import type { ResultFacts } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { holdMarginK as facts } from '../../trade/heat/heating.ts'
import { cutMarginK, onMarginK } from '../../trade/heat/thermostat.ts'
import { type Held, HOTTER_THERMOSTAT, heldBus, heldSurely, hotterWanted, type Least, leastHeld } from '../held-metal.ts'
import { atLeast, doubted, figure } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import { partTimeDoubts } from '../part-time.ts'
import type { Judged, Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Hold {
  readonly holdMarginK: Bounded
  /** What a thermostat holds it at, against the target. */
  readonly held?: Held
  /** Heaters that are on for a part of the time. */
  readonly partTime?: readonly string[]
}

interface Subject extends SteadyBus {
  readonly hold: Missing | Hold
}

/** Whether the block settles above its target, or its thermostat holds it there. What settles just there reaches it in the end, that is never. */
export const neverReaches: Rule<Subject> = {
  id: 'warm/never-reaches',
  question: 'does the metal settle above its target, or its thermostat hold it there, with all against it?',
  why: 'Below that the heater runs for ever, or is switched off too soon, and the metal stays wet, frosted or stiff with cold.',
  change: 'fit more power, keep the moving air off, insulate, or ask for less',
  source: SOURCES['heat-balance'],
  judge: ({ hold, steadyBus, steadyHigh }) => {
    if (isMissing(hold)) return notJudgedFor(hold)
    const { holdMarginK, held = null, partTime } = hold
    const judged = heldSurely(doubted(judgedBy(leastHeld(holdMarginK, held)), partTimeDoubts(partTime)), held)
    return steadily(judged, heldBus(held, { steadyBus, steadyHigh }))
  }
}

function judgedBy(least: Least): Judged {
  const { by, marginK } = least
  const judged = atLeast(FACTS[by], marginK, { value: 0 }, SAYS[by](marginK, gapOf(marginK)))
  return hotterWanted(least) ? { ...judged, change: HOTTER_THERMOSTAT } : judged
}

const FACTS: Record<Least['by'], ResultFacts> = { settles: facts, off: cutMarginK, on: onMarginK }

const SAYS: Record<Least['by'], (marginK: Bounded, gap: string) => string> = {
  settles: ({ value, low }, gap) => (low > 0 ? `it settles ${gap}` : `the target is ${word(value)} reached: it settles ${gap}`),
  off: ({ low }, gap) => (low > 0 ? `its thermostat opens ${gap}` : `the thermostat opens before the target is reached: ${gap}`),
  on: (_, gap) => `its thermostat closes again ${gap}: so far the metal cools`
}

function gapOf({ low, high }: Bounded): string {
  const gap = figure(Math.abs(low), facts)
  return low > 0
    ? `${gap} above the target${low === high ? '' : ' at the worst end'}`
    : `${gap} below it${low === high ? '' : ' at the worst end'}`
}

/** Nominally reached, at the worst end not. */
function word(nominalK: number): string {
  return nominalK > 0 ? 'not surely' : 'never'
}
