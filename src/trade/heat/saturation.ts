import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Below 0 °C this is supercooled water: how weather services state humidity at any temperature. */
export const waterSaturationPa = formula('waterSaturationPa', {
  says: 'saturation vapour pressure over water',
  symbol: 'ew',
  equation: '611.2·exp(17.62·t/(243.12 + t))',
  inputs: { airC: ['t', -45, 60] },
  source: SOURCES['wmo-8'],
  of: ({ airC }) => 611.2 * Math.exp((17.62 * airC) / (243.12 + airC))
})

export const iceSaturationPa = formula('iceSaturationPa', {
  says: 'saturation vapour pressure over ice',
  symbol: 'ei',
  equation: '611.2·exp(22.46·t/(272.62 + t))',
  inputs: { airC: ['t', -65, 0.01] },
  source: SOURCES['wmo-8'],
  of: ({ airC }) => 611.2 * Math.exp((22.46 * airC) / (272.62 + airC))
})
