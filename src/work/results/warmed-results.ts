import type { hotFit, warmFit, windowFit } from '../../fitting/warm-fit.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { ResultMap } from '../../report/result-map.ts'
import { cooledC } from '../../trade/heat/air-cooling.ts'
import { bodyC } from '../../trade/heat/conduction.ts'
import { filmWPerM2K } from '../../trade/heat/film.ts'
import * as fixed from '../../trade/heat/fixed-power.ts'
import * as heating from '../../trade/heat/heating.ts'
import { surfaceMarginK } from '../../trade/heat/moist-air.ts'
import { hottestPart } from './hottest-part.ts'

const powerW = fact('powerW', { says: 'heat put in, all heaters together', symbol: 'P', source: SOURCES.arithmetic })

/** The casting in the coldest air. */
export const WARMED_RESULTS: ResultMap<ReturnType<typeof warmFit>> = {
  'warm.power': [powerW, r => r.powerW],
  'warm.air': [cooledC, r => r.airAtPartC],
  'warm.steady': [heating.steadyC, r => r.steadyC, 'temperature that the casting settles at'],
  'warm.body': [bodyC, r => hottestPart(r.bodiesC)],
  'warm.target': [heating.targetC, r => r.targetC, 'target'],
  'warm.time-to-target': [heating.timeToTargetS, r => r.timeToTargetS],
  'warm.time-constant': [heating.timeConstantS, r => r.timeConstantS],
  'warm.film': [filmWPerM2K, r => r.filmWPerM2K],
  'warm.biot': [heating.biotRatio, r => r.biotRatio],
  'dew.surface-margin': [surfaceMarginK, r => r.dewMarginK, 'the casting, settled, above the higher of dew and frost point']
}

/** The casting in the hottest air, which stands. */
export const HOT_RESULTS: ResultMap<ReturnType<typeof hotFit>> = {
  'warm.power.hot': [powerW, r => r.powerW, 'heat put in, standing on a hot day'],
  'warm.steady.hot': [heating.steadyC, r => r.steadyC, 'temperature that it settles at, standing on a hot day'],
  'warm.body.hot': [bodyC, r => hottestPart(r.bodiesC), 'temperature that the heated part settles at, standing on a hot day'],
  'warm.film.hot': [filmWPerM2K, r => r.filmWPerM2K, 'film coefficient of the air that stands']
}

export const WINDOW_RESULTS: ResultMap<ReturnType<typeof windowFit>> = {
  'warm.power.least': [fixed.leastPowerW, r => r.leastPowerW],
  'warm.power.greatest': [fixed.greatestPowerW, r => r.greatestPowerW]
}
