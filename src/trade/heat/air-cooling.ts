import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** All the fuel evaporates in the air and nothing else warms it: the most that evaporation can cool. */
export const evaporationDropK = formula('evaporationDropK', {
  says: 'cooling of the air by fuel that evaporates in it',
  symbol: 'ΔT',
  equation: 'f·L/(ca + f·cf)',
  inputs: {
    fuelAirRatio: ['f', 0, 0.5],
    latentJPerKg: ['L', 1e4, 2.6e6],
    airHeatJPerKgK: ['ca', 900, 1200],
    fuelHeatJPerKgK: ['cf', 500, 5000]
  },
  source: SOURCES['evaporation-balance'],
  of: ({ fuelAirRatio, latentJPerKg, airHeatJPerKgK, fuelHeatJPerKgK }) =>
    (fuelAirRatio * latentJPerKg) / (airHeatJPerKgK + fuelAirRatio * fuelHeatJPerKgK)
})

export const venturiDropK = formula('venturiDropK', {
  says: 'cooling of air that speeds up from rest',
  symbol: 'ΔT',
  equation: 'V^2/(2·ca)',
  inputs: { throatMPerS: ['V', 0, 300], airHeatJPerKgK: ['ca', 900, 1200] },
  source: SOURCES['steady-flow'],
  of: ({ throatMPerS, airHeatJPerKgK }) => throatMPerS ** 2 / (2 * airHeatJPerKgK)
})

export const cooledC = formula('cooledC', {
  says: 'air at the part, after evaporation and throat',
  symbol: 'Tc',
  equation: 'Ta - De - Dv',
  inputs: { airC: ['Ta', -90, 150], evaporationDropK: ['De', 0, 100], venturiDropK: ['Dv', 0, 50] },
  source: SOURCES.arithmetic,
  of: ({ airC, evaporationDropK, venturiDropK }) => airC - evaporationDropK - venturiDropK
})
