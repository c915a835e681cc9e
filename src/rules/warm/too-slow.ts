import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { timeToTargetS as facts } from '../../trade/heat/heating.ts'
import { cutShort, type Held, HOTTER_THERMOSTAT, heldSurely } from '../held-metal.ts'
import { atMost, doubted, type Limit, notJudged } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import { partTimeDoubts } from '../part-time.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  /** And heaters that are on for a part of the time. */
  readonly reach: Missing | { readonly timeToTargetS: Bounded; readonly held?: Held; readonly partTime?: readonly string[] }
  readonly within: Limit | null
}

/** Whether the metal is at its target in time, in the coldest air and at the lowest power. */
export const tooSlow: Rule<Subject> = {
  id: 'warm/too-slow',
  question: 'is the metal at its target in the time it may take, with all against it?',
  why: 'Who finds it still cold goes without it, or starts against frozen or stiff metal.',
  change: 'fit more power, switch it on earlier, keep the moving air off, or ask for less',
  source: SOURCES['heat-balance'],
  judge: ({ reach, within, steadyBus }) => {
    if (isMissing(reach)) return notJudgedFor(reach)
    if (within === null) return notJudged('warm.within', 'say how long the warming may take')
    const { timeToTargetS, held = null, partTime } = reach
    const says = `${takesOf(timeToTargetS, held)} may take ${spoken(within.value)}`
    const judged = doubted(atMost(facts, timeToTargetS, within, says), partTimeDoubts(partTime))
    const sure = steadily(held === 'untold' ? heldSurely(judged, held) : judged, { steadyBus })
    return cutShort(held) ? { ...sure, change: HOTTER_THERMOSTAT } : sure
  }
}

function takesOf(timeToTargetS: Bounded, held: Held): string {
  if (cutShort(held)) return 'the target may never be reached, since the thermostat may open before, and it'
  if (timeToTargetS.high === Number.POSITIVE_INFINITY) return 'the target may never be reached, and it'
  return `it takes ${spoken(timeToTargetS.high)}${worst(timeToTargetS)}, and`
}

function worst({ low, high }: Bounded): string {
  return low === high ? '' : ' at the worst end'
}

/** As somebody would say it. */
function spoken(timeS: number): string {
  if (timeS < 120) return `${Math.round(timeS)} s`
  return timeS < 7200 ? `${(timeS / 60).toFixed(1)} min` : `${(timeS / 3600).toFixed(1)} h`
}
