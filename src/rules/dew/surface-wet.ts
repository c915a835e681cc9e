import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { steadyC } from '../../trade/heat/heating.ts'
import { surfaceMarginK as facts } from '../../trade/heat/moist-air.ts'
import { type Held, heldBus, heldSurely, hotterWanted, type Least, leastHeld } from '../held-metal.ts'
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
  /** What a thermostat holds it at, against that point. */
  readonly held?: Held
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
    const { surfaceMarginK, of, governs, held = null } = surface
    const least = leastHeld(surfaceMarginK, held)
    const { by, marginK } = least
    const { low, high } = marginK
    const where = `${figure(Math.abs(low), facts)} ${low < 0 ? 'below' : 'above'} the ${governs}${low === high ? '' : ' at the worst end'}`
    const says = `${heldAt(by, held) ?? of} is ${where}: an estimate of the temperature of the metal`
    const judged = atLeast(facts, marginK, { value: 0 }, says)
    const told = hotterWanted(least) ? { ...judged, change: `take a thermostat that opens and closes above the ${governs}` } : judged
    return steadily(heldSurely(told, held), heldBus(held, surface))
  }
}

function heldAt(by: Least['by'], held: Held): string | null {
  if (held === null || held === 'untold' || by === 'settles') return null
  const offC = figure(held.offC.low, steadyC)
  return by === 'off' || held.onC === null
    ? `the metal, with its power taken off at ${offC},`
    : `the metal, cooled to the ${figure(held.onC.low, steadyC)} at which its thermostat closes again,`
}
