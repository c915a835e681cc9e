import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const atmosphereC = formula('atmosphereC', {
  says: 'temperature of the standard atmosphere',
  symbol: 't',
  equation: '15 - 0.0065·H',
  inputs: { altitudeM: ['H', -2000, 11000] },
  source: SOURCES['iso-2533'],
  of: ({ altitudeM }) => 15 - 0.0065 * altitudeM
})

export const atmospherePa = formula('atmospherePa', {
  says: 'pressure of the standard atmosphere',
  symbol: 'p',
  equation: '101325·((288.15 - 0.0065·H)/288.15)^5.25588',
  inputs: { altitudeM: ['H', -2000, 11000] },
  source: SOURCES['iso-2533'],
  of: ({ altitudeM }) => 101325 * ((288.15 - 0.0065 * altitudeM) / 288.15) ** 5.25588
})

export const densityKgPerM3 = formula('densityKgPerM3', {
  says: 'density of dry air',
  symbol: 'ρ',
  equation: 'p/(287.05287·(t + 273.15))',
  inputs: { pressurePa: ['p', 20000, 130000], airC: ['t', -90, 200] },
  source: SOURCES['iso-2533'],
  of: ({ pressurePa, airC }) => pressurePa / (287.05287 * (airC + 273.15))
})
