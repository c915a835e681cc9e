import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { ResultMap } from '../../report/result-map.ts'
import * as margin from '../../trade/supply/margin.ts'
import * as peukert from '../../trade/supply/peukert.ts'
import type { supply } from '../../trade/supply/supply.ts'

const loadA = fact('loadA', { says: 'sum of the loads, each with its duty', symbol: 'I', source: SOURCES.arithmetic })

export const SUPPLY_RESULTS: ResultMap<ReturnType<typeof supply>> = {
  load: [loadA, r => r.loadA],
  margin: [margin.marginA, r => r.marginA],
  'load-percent': [margin.usedPercent, r => r.loadPercent],
  endurance: [peukert.enduranceS, r => r.battery?.enduranceS],
  capacity: [peukert.coldCapacityAh, r => r.battery?.capacityAh, 'capacity of the battery, in the cold where that was given'],
  'delivered-percent': [peukert.deliveredPercent, r => r.battery?.deliveredPercent]
}
