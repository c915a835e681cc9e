import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import { meterError } from '../../trade/proof/meter.ts'
import type { TestPoint } from '../../trade/proof/predictor.ts'
import { isLive, probed, type Tested } from '../../trade/proof/probe.ts'
import { isSwitchedOff } from '../../trade/proof/switched-off.ts'

/** What a meter should show in a circuit in order. */
export interface Band {
  readonly value: number
  /** With every bound at its worst end and the meter as far off as its sheet allows. */
  readonly low: number
  readonly high: number
  readonly ideal: Bounded
}

/** What an open run of very many ohms lets through is none. */
const NO_CURRENT = { value: 0, low: 0, high: 0, movers: [], hangsOn: [] }

/** The band at each point. Each test with the power off is a circuit of its own, and is worked out by itself. */
export function bandsOf(tested: Tested, points: readonly TestPoint[]): readonly Band[] {
  const live = points.filter(isLive)
  const alive = idealOf(tested, live)
  return points.map(point => {
    const solved = isLive(point) ? alive[live.indexOf(point)]! : idealOf(tested, [point])[0]!
    const ideal = isSwitchedOff(tested, point) ? { ...solved, ...NO_CURRENT } : solved
    const { takes, meter } = point
    return {
      value: ideal.value,
      low: ideal.low - meterError(takes, meter, ideal.low),
      high: ideal.high + meterError(takes, meter, ideal.high),
      ideal
    }
  })
}

function idealOf(tested: Tested, points: readonly TestPoint[]): readonly Bounded[] {
  return points.length === 0 ? [] : boundsOf(tested, x => ({ shown: probed(x, points) })).shown
}
