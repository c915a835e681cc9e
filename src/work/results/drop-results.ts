import type { circuitFit } from '../../fitting/circuit-fit.ts'
import type { ResultMap } from '../../report/result-map.ts'
import type { drop } from '../../trade/circuit/drop.ts'
import * as feed from '../../trade/circuit/feed.ts'
import * as load from '../../trade/circuit/load.ts'
import { ratedSharePercent } from '../../trade/circuit/rating-share.ts'

export type LoadResults = ReturnType<typeof circuitFit>['loads'][number]

/** What one load of a circuit gets. */
export const LOAD_RESULTS: ResultMap<LoadResults> = {
  'heater.resistance': [load.resistanceOhm, r => r.resistanceOhm, 'resistance of the load, hot'],
  'drop.drop': [feed.dropV, r => r.dropV],
  'drop.drop-percent': [feed.dropPercent, r => r.dropPercent],
  'drop.voltage-at-load': [feed.loadV, r => r.atV],
  'drop.current': [load.currentA, r => r.currentA],
  'drop.power': [load.powerW, r => r.powerW],
  'drop.rated-share': [ratedSharePercent, r => r.ratedSharePercent]
}

/** What a feed and its return lose. */
export const DROP_RESULTS: ResultMap<ReturnType<typeof drop>> = {
  'resistance.loop': [feed.loopOhm, r => r.loopOhm, 'loop resistance, without the load'],
  drop: [feed.dropV, r => r.dropV],
  'drop-percent': [feed.dropPercent, r => r.dropPercent],
  'voltage-at-load': [feed.loadV, r => r.loadV],
  current: [feed.fedA, r => r.currentA, 'current'],
  power: [feed.loadW, r => r.loadW]
}
