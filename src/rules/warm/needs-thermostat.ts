import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { bodyC } from '../../trade/heat/conduction.ts'
import { spanW as facts, leastPowerW } from '../../trade/heat/fixed-power.ts'
import { sooner } from '../held-metal.ts'
import { atLeast, figure, figuresApart, type Limit, plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  readonly window: Missing | { readonly leastPowerW: Bounded; readonly greatestPowerW: Bounded; readonly spanW: Bounded }
  readonly thermostatC: number | null
  /** The hottest spot when it takes the power off; null where that cannot be told. */
  readonly heldC: Bounded | null
  /** What the hottest spot may reach. */
  readonly limit: Limit | null
}

/** Whether any fixed power is enough on the coldest day and not too much on the hottest. */
export const needsThermostat: Rule<Subject> = {
  id: 'warm/needs-thermostat',
  question: 'is there a fixed power that meets both cold moving air at low bus and hot still air at high bus?',
  why: 'Where there is none, a stronger heater only moves the fault from the cold day to the hot one.',
  change: 'fit a thermostat, or an interlock that takes the power off when the air stops',
  source: SOURCES['heat-balance'],
  judge: ({ window, thermostatC, heldC, limit, ...bus }) => {
    const over = overOf(heldC, limit)
    if (thermostatC !== null && over === null) return plainly('pass', 'a thermostat is fitted', ['warm', 'thermostat'])
    if (isMissing(window)) return notJudgedFor(window)
    const [least, greatest] = figuresApart(window.leastPowerW.high, window.greatestPowerW.low, leastPowerW)
    const room = roomIn(window)
    const says =
      room.low > 0
        ? `rated powers from ${least} to ${greatest} meet both cold moving and hot still air`
        : `no fixed power meets both: cold moving air asks for ${least} at least, hot still air allows ${greatest} at most`
    const judged = steadily(atLeast(facts, room, { value: 0 }, `${says}${thermostatC === null ? '' : over}`), bus)
    return thermostatC === null ? judged : { ...judged, change: sooner({ heldC, thermostatC }) }
  }
}

/** Whoever buys a heater does not know where between its bounds the loss lies: one power has to do at both ends of them. */
function roomIn({ leastPowerW, greatestPowerW, spanW }: Exclude<Subject['window'], Missing>): Bounded {
  return { ...spanW, low: Math.min(spanW.low, greatestPowerW.low - leastPowerW.high) }
}

/** Why a thermostat is no way out: it opens too late, or the heated part stands too far above the casting that it sits on. */
function overOf(heldC: Bounded | null, limit: Limit | null): string | null {
  if (limit === null || (heldC !== null && heldC.high <= limit.value)) return null
  const at = heldC === null ? '' : `: when it opens the hottest spot is at ${figure(heldC.high, bodyC)}`
  return `; the thermostat does not keep the limit${at}`
}
