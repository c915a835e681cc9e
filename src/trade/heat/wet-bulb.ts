import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const depressionK = formula('depressionK', {
  says: 'air above wet bulb',
  symbol: 'Δt',
  equation: 't - tw',
  inputs: { airC: ['t', -45, 60], wetBulbC: ['tw', -45, 60] },
  source: SOURCES.arithmetic,
  of: ({ airC, wetBulbC }) => airC - wetBulbC
})

export const bulbVapourPressurePa = formula('bulbVapourPressurePa', {
  says: 'vapour pressure from a ventilated wet bulb, water on the bulb',
  symbol: 'e',
  equation: 'ew - 0.000653·(1 + 0.000944·tw)·p·Δt',
  inputs: {
    waterSaturationPa: ['ew', 11, 19994],
    wetBulbC: ['tw', 0, 60],
    pressurePa: ['p', 20000, 110000],
    depressionK: ['Δt', 0, 60]
  },
  source: SOURCES['wmo-8-psychrometer'],
  of: ({ waterSaturationPa, wetBulbC, pressurePa, depressionK }) =>
    waterSaturationPa - 0.000653 * (1 + 0.000944 * wetBulbC) * pressurePa * depressionK
})

export const icedVapourPressurePa = formula('icedVapourPressurePa', {
  says: 'vapour pressure from a ventilated wet bulb, ice on the bulb',
  symbol: 'e',
  equation: 'ei - 0.000575·p·Δt',
  inputs: { iceSaturationPa: ['ei', 0.5, 612], pressurePa: ['p', 20000, 110000], depressionK: ['Δt', 0, 60] },
  source: SOURCES['wmo-8-psychrometer'],
  of: ({ iceSaturationPa, pressurePa, depressionK }) => iceSaturationPa - 0.000575 * pressurePa * depressionK
})
