import type { Given, Plain } from '../../formula/given.ts'
import { type LoadGiven, loadA } from './load.ts'
import * as margin from './margin.ts'
import * as peukert from './peukert.ts'

export interface BatteryGiven {
  readonly capacityAh: Given
  /** The time its capacity is printed for. */
  readonly rateS: Given
  readonly peukertFactor: Given
  /** What the cold leaves of the capacity, from the maker. */
  readonly coldPercent: Given
}

export interface SupplyGiven {
  readonly outputA: Given
  readonly loads: readonly LoadGiven[]
  readonly battery: BatteryGiven | null
}

/** Whether the output carries the loads, and how long the battery alone does. */
export function supply({ outputA, loads, battery }: Plain<SupplyGiven>) {
  const load = loadA(loads)
  return {
    outputA,
    loadA: load,
    marginA: margin.marginA({ outputA, loadA: load }),
    loadPercent: outputA > 0 ? margin.usedPercent({ outputA, loadA: load }) : null,
    battery: battery === null ? null : load === 0 ? untouched(battery) : endurance(battery, load)
  }
}

/** Cold first, then the discharge rate. */
export function endurance({ capacityAh, rateS, peukertFactor, coldPercent }: Plain<BatteryGiven>, currentA: number) {
  const leftAh = peukert.coldCapacityAh({ capacityAh, coldPercent })
  if (currentA * rateS < 3600 * leftAh)
    return { capacityAh: leftAh, enduranceS: peukert.slowEnduranceS({ capacityAh: leftAh, currentA }), deliveredPercent: 100 }
  const at = { capacityAh: leftAh, rateS, currentA, peukertFactor }
  return { capacityAh: leftAh, enduranceS: peukert.enduranceS(at), deliveredPercent: peukert.deliveredPercent(at) }
}

/** Without any load it lasts without end. */
function untouched({ capacityAh }: Plain<BatteryGiven>): ReturnType<typeof endurance> {
  return { capacityAh, enduranceS: Number.POSITIVE_INFINITY, deliveredPercent: 100 }
}
