import type { Plain } from '../../formula/given.ts'
import { type Around, type Loss, lossAtWPerK } from './block.ts'
import * as fixed from './fixed-power.ts'
import { crossing } from './settle.ts'

/** A heater whose power follows the square of the bus, and whose resistance may follow its temperature. */
export interface PowerWindow {
  /** Must be held in the coldest air that moves. */
  readonly cold: { readonly targetC: number; readonly around: Around; readonly loss: Plain<Loss>; readonly busV: number }
  /** What the part or a seal may reach in the hottest air that stands. */
  readonly hot: { readonly limitC: number; readonly around: Around; readonly loss: Plain<Loss>; readonly busV: number }
  readonly ratedV: number
  /** What a heater gives of its rating, by its tolerance. */
  readonly ratingRatios: readonly [least: number, greatest: number]
  readonly follows: { readonly resistanceChangePerK: number; readonly hotC: number } | null
  /** How much hotter than the casting the hottest heated part gets by one watt of all heaters. */
  readonly jointKPerW: number
}

/** Rated powers. The losses are those at target and limit, where the power has to hold. */
export function powerWindow({ cold, hot, ratedV, ratingRatios, follows, jointKPerW }: PowerWindow) {
  const { targetC } = cold
  const limitC = castingAtLimitC(hot, jointKPerW)
  const coldWPerK = lossAtWPerK(cold.loss, cold.around, targetC)
  const hotWPerK = lossAtWPerK(hot.loss, hot.around, limitC)
  const asRatedW = (powerW: number, castingC: number, castingW: number) =>
    follows === null ? powerW : fixed.asRatedW({ powerW, ...follows, partC: castingC + jointKPerW * castingW })
  const [coldK, hotK] = [targetC - cold.around.airC, limitC - hot.around.airC]
  const [leastRatio, greatestRatio] = ratingRatios
  const leastW = fixed.leastPowerW({
    lossWPerK: coldWPerK,
    targetC,
    airC: cold.around.airC,
    ratedV,
    busV: cold.busV,
    ratingRatio: leastRatio
  })
  const greatestW = fixed.greatestPowerW({
    lossWPerK: hotWPerK,
    limitC,
    airC: hot.around.airC,
    ratedV,
    busV: hot.busV,
    ratingRatio: greatestRatio
  })
  const leastPowerW = asRatedW(leastW, targetC, coldWPerK * coldK)
  const greatestPowerW = asRatedW(greatestW, limitC, hotWPerK * hotK)
  return { leastPowerW, greatestPowerW, spanW: fixed.spanW({ leastPowerW, greatestPowerW }) }
}

/** The casting when the hottest spot stands at the limit: that is the heated part, where it is told apart. */
function castingAtLimitC({ limitC, around, loss }: PowerWindow['hot'], jointKPerW: number): number {
  const { airC } = around
  if (jointKPerW === 0 || limitC <= airC) return limitC
  const partC = (castingC: number) => castingC + jointKPerW * lossAtWPerK(loss, around, castingC) * (castingC - airC)
  return crossing(castingC => partC(castingC) - limitC, airC, limitC)
}
