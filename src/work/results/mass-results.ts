import { SOURCES } from '../../formula/source.ts'
import type { ResultMap } from '../../report/result-map.ts'
import type { extremes } from '../../trade/mass/extremes.ts'
import { type mass, massKg, movedKg } from '../../trade/mass/mass.ts'
import * as moment from '../../trade/mass/moment.ts'

export const MASS_RESULTS: ResultMap<ReturnType<typeof mass>> = {
  mass: [massKg, r => r.massKg, undefined, 'weighed'],
  centre: [moment.centreM, r => r.centreM, undefined, 'arm'],
  change: [moment.changeM, r => r.changeM, undefined, 'arm-change'],
  moved: [movedKg, r => r.movedKg],
  'margin.forward': [moment.forwardMarginM, r => r.margins?.forwardMarginM, undefined, 'arm'],
  'margin.rearward': [moment.rearwardMarginM, r => r.margins?.rearwardMarginM, undefined, 'arm']
}

const loadedCentreM = { ...moment.centreM, source: SOURCES['adverse-loading'] }

/** The two loadings that bring the centre furthest. */
export const LOADED_RESULTS: ResultMap<ReturnType<typeof extremes>> = {
  'centre.forward': [loadedCentreM, r => r.forward.centreM, 'centre of mass, loaded as far forward as can be', 'arm'],
  'centre.rearward': [loadedCentreM, r => r.rearward.centreM, 'centre of mass, loaded as far to the rear as can be', 'arm']
}
