import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const vapourPressurePa = formula('vapourPressurePa', {
  says: 'vapour pressure from relative humidity over water',
  symbol: 'e',
  equation: 'U·ew/100',
  inputs: { humidityPercent: ['U', 0, 100], waterSaturationPa: ['ew', 11, 19994] },
  source: SOURCES['wmo-8'],
  of: ({ humidityPercent, waterSaturationPa }) => (humidityPercent * waterSaturationPa) / 100
})

export const humidityPercent = formula('humidityPercent', {
  says: 'relative humidity over water',
  symbol: 'U',
  equation: '100·e/ew',
  inputs: { vapourPressurePa: ['e', 0, 19994], waterSaturationPa: ['ew', 11, 19994] },
  source: SOURCES['wmo-8'],
  of: ({ vapourPressurePa, waterSaturationPa }) => (100 * vapourPressurePa) / waterSaturationPa
})

export const humidityOverIcePercent = formula('humidityOverIcePercent', {
  says: 'relative humidity over ice',
  symbol: 'Ui',
  equation: '100·e/ei',
  inputs: { vapourPressurePa: ['e', 0, 19994], iceSaturationPa: ['ei', 0.5, 19994] },
  source: SOURCES['wmo-8'],
  of: ({ vapourPressurePa, iceSaturationPa }) => (100 * vapourPressurePa) / iceSaturationPa
})

/** The range is that of the saturation over water, -45 to 60 °C, turned round. */
export const dewPointC = formula('dewPointC', {
  says: 'dew point',
  symbol: 'td',
  equation: '243.12·log(e/611.2)/(17.62 - log(e/611.2))',
  inputs: { vapourPressurePa: ['e', 11.17, 19993.3] },
  source: SOURCES['wmo-8'],
  of: ({ vapourPressurePa }) => (243.12 * Math.log(vapourPressurePa / 611.2)) / (17.62 - Math.log(vapourPressurePa / 611.2))
})

/** The range is that of the saturation over ice, -65 to 0.01 °C, turned round. */
export const frostPointC = formula('frostPointC', {
  says: 'frost point',
  symbol: 'tf',
  equation: '272.62·log(e/611.2)/(22.46 - log(e/611.2))',
  inputs: { vapourPressurePa: ['e', 0.54, 611.71] },
  source: SOURCES['wmo-8'],
  of: ({ vapourPressurePa }) => (272.62 * Math.log(vapourPressurePa / 611.2)) / (22.46 - Math.log(vapourPressurePa / 611.2))
})

export const humidityRatio = formula('humidityRatio', {
  says: 'water in the air per mass of dry air',
  symbol: 'w',
  equation: '0.621945·e/(p - e)',
  inputs: { vapourPressurePa: ['e', 0, 19994], pressurePa: ['p', 20000, 110000] },
  source: SOURCES['ashrae-moist-air'],
  of: ({ vapourPressurePa, pressurePa }) => (0.621945 * vapourPressurePa) / (pressurePa - vapourPressurePa)
})

export const surfaceMarginK = formula('surfaceMarginK', {
  says: 'surface above the higher of dew and frost point',
  symbol: 'm',
  equation: 'ts - tp',
  inputs: { surfaceC: ['ts', -273.15, 2000], pointC: ['tp', -65, 60] },
  source: SOURCES.arithmetic,
  of: ({ surfaceC, pointC }) => surfaceC - pointC
})
