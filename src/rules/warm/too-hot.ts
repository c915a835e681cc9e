import { type Bounded, exactly } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { steadyC } from '../../trade/heat/heating.ts'
import { sooner, standsAbove } from '../held-metal.ts'
import { atMost, figure, type Limit, notJudged, plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'
import { type CutAt, cutBelow, type SteadyBus, steadily } from '../steady-bus.ts'
import { besideUncounted, type Uncounted } from '../uncounted.ts'

interface Subject extends SteadyBus, CutAt, Uncounted {
  /** Its hottest spot in the hottest air that stands, at the highest power; or that it leaves what a film is worked out for. */
  readonly hot: Missing | { readonly hottestC: Bounded } | { readonly beyondC: number }
  /** What the job says that it stands. */
  readonly limit: Limit | null
  /** Its hottest spot when a thermostat that counts takes the power off; null where none does. */
  readonly heldC: Bounded | null
}

const facts = { ...steadyC, says: 'standing still on a hot day its hottest spot settles at' }

/** Whether it stays below its limit when the machine stands on a hot day and the heater was left on. */
export const tooHot: Rule<Subject> = {
  id: 'warm/too-hot',
  question: 'does it stay below its limit, standing still on a hot day at high bus, with every other load off?',
  why: 'Air that stands takes far less heat than air that moves: seals, wires and fuel beside it get hotter than on any cold morning.',
  change: 'fit a thermostat, an interlock that needs moving air, or less power',
  source: SOURCES['heat-balance'],
  judge: ({ hot, limit, heldC, thermostatC, hotAirC, steadyHigh, uncounted }) => {
    if (isMissing(hot)) return notJudgedFor(hot)
    if (limit === null) return notJudged('warm.limit', 'ask what the seals, wires and parts beside it stand, and give it with its reason')
    const cut = { heldC, thermostatC, hotAirC }
    const bus = cutBelow(limit.value, cut) && !standsAbove(cut) ? {} : { steadyHigh }
    const off = held(hot, limit, cut)
    if (off !== null) return heldTooHot(steadily(off, bus), limit, cut)
    if ('hottestC' in hot) {
      const judged = steadily(besideUncounted(atMost(facts, hot.hottestC, limit), { uncounted }), bus)
      return heldTooHot(judged, limit, cut)
    }
    const beyond = plainly('fail', `it gets hotter than the ${figure(hot.beyondC, facts)} up to which a film is worked out`)
    return besideUncounted(beyond, { uncounted })
  }
}

interface Off extends CutAt {
  readonly heldC: Bounded | null
}

/** What helps where a thermostat counts, and does not keep the limit. */
function heldTooHot(judged: Judged, { value }: Limit, { hotAirC, ...held }: Off): Judged {
  const isOver = judged.verdict === 'fail' || (judged.margin ?? 0) < 0
  if (!isOver || held.heldC === null) return judged
  return { ...judged, change: hotAirC !== null && hotAirC > value ? COOLER_AIR : sooner(held) }
}

const COOLER_AIR = 'keep what stands no more out of that air: it gets as hot there without any heater'

/** The thermostat counts where without it the hottest spot would get hotter. It cools nothing: in hotter air the metal gets as hot as the air. */
function held(hot: Exclude<Subject['hot'], Missing>, limit: Limit, { heldC, thermostatC, hotAirC }: Off): Judged | null {
  if (heldC === null || thermostatC === null) return null
  if ('hottestC' in hot && hot.hottestC.high <= heldC.high) return null
  const without = 'hottestC' in hot ? `would settle at ${figure(hot.hottestC.high, facts)}` : 'would get hotter than can be told'
  const part = standsAbove({ heldC, thermostatC }) ? `, with the heated part at ${figure(heldC.high, facts)}` : ''
  const off = `the thermostat takes the power off at ${figure(thermostatC, facts)}${part}`
  if (hotAirC !== null && hotAirC > heldC.high)
    return atMost(facts, exactly(hotAirC), limit, `${off}; the air alone brings the metal to ${figure(hotAirC, facts)}`)
  return atMost(facts, heldC, limit, `${off}; without it, it ${without}`)
}
