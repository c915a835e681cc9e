import { SOURCES } from '../../formula/source.ts'
import { softensC } from '../../trade/heat/creep.ts'
import { steadyC } from '../../trade/heat/heating.ts'
import { atMost, neverFails, plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'
import type { SettledMetal } from '../settled-metal.ts'
import { type CutAt, cutBelow, type SteadyBus, steadily } from '../steady-bus.ts'
import { besideUncounted, type Uncounted } from '../uncounted.ts'

interface Subject extends SteadyBus, Partial<CutAt>, Uncounted {
  readonly metal: Missing | SettledMetal
}

const facts = { ...steadyC, says: 'the casting settles at' }

/** Whether the casting stays metal that holds a thread. */
export const metalSoftens: Rule<Subject> = {
  id: 'warm/metal-softens',
  question: 'does the casting stay below half of its melting temperature, in kelvin?',
  why: 'Above that a metal gives way slowly under load: a thread loses its clamp, a bore its size. Far above, it melts.',
  change: 'fit less power, a thermostat, or an interlock that takes the power off when the air stops',
  source: SOURCES['melting-points'],
  judge: ({ metal, steadyHigh, thermostatC, hotAirC, uncounted }) => {
    if (isMissing(metal)) return notJudgedFor(metal)
    if ('beyondC' in metal) {
      const says = `the casting gets hotter than the ${metal.beyondC} °C up to which a film is worked out`
      return besideUncounted(plainly('fail', says), { uncounted })
    }
    const { settlesC, meltsC, of } = metal
    const melts = atMost(facts, settlesC, { value: meltsC, reason: `where ${of} begins to melt` })
    const reason = `half of where ${of} melts, in kelvin: above that it creeps under load`
    if (melts.verdict === 'fail') return besideUncounted(melts, { uncounted })
    const judged = besideUncounted(neverFails(atMost(facts, settlesC, { value: softensC({ meltsC }), reason })), { uncounted })
    return cutBelow(softensC({ meltsC }), { thermostatC, hotAirC }) ? judged : steadily(judged, { steadyHigh })
  }
}
