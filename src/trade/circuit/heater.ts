import type { Given, Plain } from '../../formula/given.ts'
import * as load from './load.ts'
import { ratedSharePercent } from './rating-share.ts'
import * as switchOn from './switch-on.ts'

/** What is known of the current while the element is still cold. */
export type Cold =
  | { readonly by: 'multiple'; readonly coldFactor: Given }
  | { readonly by: 'coefficient'; readonly resistanceChangePerK: Given; readonly hotC: Given }
  | { readonly by: 'unknown' }

export interface Heater {
  /** Of one heater, hot, at rated voltage. */
  readonly powerW: Given
  readonly ratedV: Given
  /** The voltage it gets. */
  readonly atV: Given
  /** How many, in parallel. */
  readonly count: number
  readonly cold: Cold
}

/** What so many heaters take together at the voltage they get, and each of them. */
export function heater({ powerW: ratedW, ratedV, atV, count, cold: element }: Plain<Heater>) {
  const resistanceOhm = load.resistanceOhm({ ratedV, powerW: ratedW })
  const currentA = load.currentA({ atV, resistanceOhm })
  const powerW = load.powerW({ atV, resistanceOhm })
  const togetherOhm = load.togetherOhm({ resistanceOhm, count })
  const togetherA = load.togetherA({ currentA, count })
  const togetherW = load.togetherW({ powerW, count })
  const cold = coldOf(element, { atV, resistanceOhm, togetherA, count })
  const share = ratedSharePercent({ powerW, ratedW })
  return { togetherOhm, togetherA, togetherW, ...cold, ratedSharePercent: share, each: { resistanceOhm, currentA, powerW } }
}

interface Hot {
  readonly atV: number
  readonly resistanceOhm: number
  readonly togetherA: number
  readonly count: number
}

interface ColdValues {
  /** At switch-on, all together. */
  readonly coldA: number | undefined
  /** All together, at 20 °C. */
  readonly meterOhm: number | undefined
}

function coldOf(cold: Plain<Cold>, { atV, resistanceOhm, togetherA, count }: Hot): ColdValues {
  switch (cold.by) {
    case 'multiple': {
      const { coldFactor } = cold
      const multipliedOhm = switchOn.multipliedOhm({ resistanceOhm, coldFactor })
      return { coldA: switchOn.multipliedA({ togetherA, coldFactor }), meterOhm: switchOn.meterOhm({ coldOhm: multipliedOhm, count }) }
    }
    case 'coefficient': {
      const { resistanceChangePerK, hotC } = cold
      const coldOhm = switchOn.coldOhm({ resistanceOhm, resistanceChangePerK, hotC })
      return { coldA: switchOn.coldA({ atV, coldOhm, count }), meterOhm: switchOn.meterOhm({ coldOhm, count }) }
    }
    case 'unknown':
      return { coldA: undefined, meterOhm: undefined }
  }
}
