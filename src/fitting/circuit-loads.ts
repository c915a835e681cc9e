import type { Plain } from '../formula/given.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as load from '../trade/circuit/load.ts'
import type { Settled } from '../trade/circuit/part.ts'
import { ratedSharePercent } from '../trade/circuit/rating-share.ts'
import type { FittedLoad } from './circuit.ts'
import { loadId } from './circuit-parts.ts'

const ROUNDING = 1e-12

/** What one load of a settled circuit gets. What only a rated load has is null for the others. */
export function atLoad(fitted: Plain<FittedLoad>, { flows }: Settled, busV: number) {
  const flow = flows[loadId(fitted.name)]!
  // What stands across a load that is switched off is rounding, of either sign.
  const atV = Math.abs(flow.dropV) < ROUNDING * Math.abs(busV) ? 0 : flow.dropV
  const dropV = Math.max(0, busV - atV)
  return {
    name: fitted.name,
    atV,
    dropV,
    dropPercent: feed.dropPercent({ dropV, busV }),
    ...taken(fitted, { atV, currentA: flow.currentA, powerW: flow.powerW })
  }
}

interface Flowing {
  readonly atV: number
  readonly currentA: number
  readonly powerW: number
}

interface Taken {
  readonly resistanceOhm: number | null
  readonly currentA: number
  readonly powerW: number
  readonly ratedSharePercent: number | null
}

function taken({ takes }: Plain<FittedLoad>, { atV, currentA, powerW }: Flowing): Taken {
  if (takes.by !== 'rated')
    return { resistanceOhm: takes.by === 'resistance' ? takes.resistanceOhm : null, currentA, powerW, ratedSharePercent: null }
  const resistanceOhm = load.resistanceOhm(takes)
  const power = load.powerW({ atV: Math.abs(atV), resistanceOhm })
  return {
    resistanceOhm,
    currentA: load.currentA({ atV: Math.abs(atV), resistanceOhm }),
    powerW: power,
    ratedSharePercent: ratedSharePercent({ powerW: power, ratedW: takes.powerW })
  }
}
