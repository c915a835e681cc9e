import type { ResultMap } from '../../report/result-map.ts'
import type { heater } from '../../trade/circuit/heater.ts'
import * as load from '../../trade/circuit/load.ts'
import * as switchOn from '../../trade/circuit/switch-on.ts'

/** What heaters take, all of them together and each. */
export const HEATER_RESULTS: ResultMap<ReturnType<typeof heater>> = {
  resistance: [load.togetherOhm, r => r.togetherOhm],
  current: [load.togetherA, r => r.togetherA],
  power: [load.togetherW, r => r.togetherW],
  'current.cold': [switchOn.coldA, r => r.coldA],
  'resistance.cold': [switchOn.meterOhm, r => r.meterOhm],
  'each.resistance': [load.resistanceOhm, r => r.each.resistanceOhm],
  'each.current': [load.currentA, r => r.each.currentA],
  'each.power': [load.powerW, r => r.each.powerW]
}
