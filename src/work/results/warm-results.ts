import type { ResultMap } from '../../report/result-map.ts'
import { filmWPerM2K } from '../../trade/heat/film.ts'
import * as heating from '../../trade/heat/heating.ts'
import type { warm } from '../../trade/heat/warm.ts'

/** One node. A time that never comes has no answer. */
export const WARM_RESULTS: ResultMap<ReturnType<typeof warm>> = {
  steady: [heating.steadyC, r => r.steadyC],
  'time-to-target': [heating.timeToTargetS, r => r.timeToTargetS],
  'time-constant': [heating.timeConstantS, r => r.timeConstantS],
  film: [filmWPerM2K, r => r.filmWPerM2K],
  biot: [heating.biotRatio, r => r.biotRatio]
}
