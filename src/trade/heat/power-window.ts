import type { Plain } from '../../formula/given.ts'
import { type Around, type Loss, lossAtWPerK } from './block.ts'
import * as fixed from './fixed-power.ts'

/** A heater of fixed resistance: its power follows the square of the bus. */
export interface PowerWindow {
  /** Must be held in the coldest air that moves. */
  readonly cold: { readonly targetC: number; readonly around: Around; readonly loss: Plain<Loss>; readonly busV: number }
  /** What the part or a seal may reach in the hottest air that stands. */
  readonly hot: { readonly limitC: number; readonly around: Around; readonly loss: Plain<Loss>; readonly busV: number }
  readonly ratedV: number
}

/** Rated powers. The losses are those at target and limit, where the power has to hold. */
export function powerWindow({ cold, hot, ratedV }: PowerWindow) {
  const { targetC } = cold
  const { limitC } = hot
  const coldWPerK = lossAtWPerK(cold.loss, cold.around, targetC)
  const hotWPerK = lossAtWPerK(hot.loss, hot.around, limitC)
  const leastPowerW = fixed.leastPowerW({ lossWPerK: coldWPerK, targetC, airC: cold.around.airC, ratedV, busV: cold.busV })
  const greatestPowerW = fixed.greatestPowerW({ lossWPerK: hotWPerK, limitC, airC: hot.around.airC, ratedV, busV: hot.busV })
  return { leastPowerW, greatestPowerW, spanW: fixed.spanW({ leastPowerW, greatestPowerW }) }
}
