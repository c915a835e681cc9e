import type { Bounded } from '../formula/bounds.ts'
import { placesOf } from '../formula/moves.ts'
import { unsaid } from './judge.ts'
import type { Judged } from './rule.ts'
import type { SteadyBus } from './steady-bus.ts'

/** How far above what metal must stay above a thermostat holds it: it takes the power off, and the metal cools until it is on again. */
export interface HeldAbove {
  readonly offC: Bounded
  /** Null where nobody told where it closes again. */
  readonly onC: Bounded | null
  readonly cutMarginK: Bounded
  readonly onMarginK: Bounded | null
  /** Whether with the power on all the while the metal gets as hot as that. */
  readonly opens: boolean
}

/** Null where no thermostat takes the power from a heater; untold where one does, and nobody told at what metal. */
export type Held = HeldAbove | 'untold' | null

export interface Least {
  readonly by: 'settles' | 'off' | 'on'
  readonly marginK: Bounded
}

/** The coldest of where it settles, where its thermostat opens, and where that closes again. What any of them hangs on may make that one the coldest. */
export function leastHeld(settlesK: Bounded, held: Held): Least {
  const settles: Least = { by: 'settles', marginK: settlesK }
  if (held === null || held === 'untold' || !(held.opens || held.cutMarginK.low <= 0)) return settles
  const { cutMarginK, onMarginK } = held
  const both: readonly Least[] = [settles, { by: 'off', marginK: cutMarginK }]
  const all = onMarginK === null ? both : both.concat({ by: 'on', marginK: onMarginK })
  const { by, marginK } = all.reduce((least, one) => (one.marginK.low < least.marginK.low ? one : least))
  return { by, marginK: { ...marginK, hangsOn: placesOf(all.flatMap(one => one.marginK.hangsOn)) } }
}

/** Where a thermostat holds it too cold, no power helps, but a hotter thermostat; a good margin is doubted for what the rule helps against. */
export function hotterWanted({ by, marginK }: Least): boolean {
  return by !== 'settles' && !(marginK.low > 0)
}

/** A thermostat that may open below the target keeps the metal from it. */
export function cutShort(held: Held): boolean {
  return held !== null && held !== 'untold' && held.cutMarginK.low <= 0
}

/** What helps there; no power does. */
export const HOTTER_THERMOSTAT = 'take a thermostat that opens and closes above the target, or ask for less'

/** No pass where nobody told how far the metal cools with the power off. */
export function heldSurely(judged: Judged, held: Held): Judged {
  if (held === 'untold') return unsaid(judged, UNTOLD, [['warm', 'thermostat']])
  return held !== null && held.onMarginK === null && held.opens ? unsaid(judged, NO_CLOSING, [['warm', 'thermostat', 'on']]) : judged
}

const UNTOLD = 'warm.thermostat is not given: a thermostat stands in its feed, and where that takes the power off is not told'
const NO_CLOSING =
  'warm.thermostat.on is not given: how far the metal cools before the thermostat puts the power on again is not told (its card, or a thermometer on the metal)'

/** The ends of the bus that it hangs on: at a higher one a thermostat may open that does not at the bus as given. */
export function heldBus(held: Held, { steadyBus, steadyHigh }: SteadyBus): SteadyBus {
  const mayOpen = held !== null && held !== 'untold' && !held.opens && !((held.onMarginK?.low ?? -1) >= 0)
  return { steadyBus, steadyHigh: steadyHigh === true && mayOpen }
}

/** A thermostat sits on the casting: a heated part of its own stands above what that is at. */
export function standsAbove({ heldC, thermostatC }: { readonly heldC: Bounded | null; readonly thermostatC: number | null }): boolean {
  return heldC !== null && thermostatC !== null && heldC.high > thermostatC
}

/** What helps where a thermostat is fitted and it gets too hot all the same: another word of fitting one is no help. */
export function sooner(held: Parameters<typeof standsAbove>[0]): string {
  return standsAbove(held) ? LESS_ABOVE : 'take a thermostat that opens sooner, or less power'
}

const LESS_ABOVE =
  'fit less power, more contact or a better joint between the heated part and the casting, or a thermostat that opens sooner: it sits on the casting, and the part is hotter'
