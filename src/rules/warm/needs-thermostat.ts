import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { spanW as facts, leastPowerW } from '../../trade/heat/fixed-power.ts'
import { atLeast, figuresApart, plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  readonly window: Missing | { readonly leastPowerW: Bounded; readonly greatestPowerW: Bounded; readonly spanW: Bounded }
  readonly thermostatC: number | null
}

/** Whether any fixed power is enough on the coldest day and not too much on the hottest. */
export const needsThermostat: Rule<Subject> = {
  id: 'warm/needs-thermostat',
  question: 'is there a fixed power that meets both cold moving air at low bus and hot still air at high bus?',
  why: 'Where there is none, a stronger heater only moves the fault from the cold day to the hot one.',
  change: 'fit a thermostat, or an interlock that takes the power off when the air stops',
  source: SOURCES['heat-balance'],
  judge: ({ window, thermostatC, ...bus }) => {
    if (thermostatC !== null) return plainly('pass', 'a thermostat is fitted', ['warm', 'thermostat'])
    if (isMissing(window)) return notJudgedFor(window)
    const [least, greatest] = figuresApart(window.leastPowerW.high, window.greatestPowerW.low, leastPowerW)
    const says =
      window.spanW.low > 0
        ? `rated powers from ${least} to ${greatest} meet both cold moving and hot still air`
        : `no fixed power meets both: cold moving air asks for ${least} at least, hot still air allows ${greatest} at most`
    return steadily(atLeast(facts, window.spanW, { value: 0 }, says), bus)
  }
}
