import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/**
 * Dry air near 1 atm. Chosen over Sutherland's forms because it lies within 0.2 % of a reference program from 250 to 350 K,
 * where Sutherland's conductivity is off by up to 1.6 %. The specific heat is held at one figure: within 1 % from -40 to 130 °C, 2 % at 200 °C.
 */
const FILM = ['t', -60, 200] as const

export const reducedRatio = formula('reducedRatio', {
  says: 'reduced temperature of air',
  symbol: 'θ',
  equation: '(t + 273.15)/103.3',
  inputs: { filmC: FILM },
  source: SOURCES['lemmon-jacobsen'],
  of: ({ filmC }) => (filmC + 273.15) / 103.3
})

export const collisionRatio = formula('collisionRatio', {
  says: 'collision integral of air',
  symbol: 'Ω',
  equation: 'exp(0.431 - 0.4623·log(θ) + 0.08406·log(θ)^2 + 0.005341·log(θ)^3 - 0.00331·log(θ)^4)',
  inputs: { reducedRatio: ['θ', 2, 5] },
  source: SOURCES['lemmon-jacobsen'],
  of: ({ reducedRatio }) => {
    const l = Math.log(reducedRatio)
    return Math.exp(0.431 - 0.4623 * l + 0.08406 * l ** 2 + 0.005341 * l ** 3 - 0.00331 * l ** 4)
  }
})

export const viscosityPaS = formula('viscosityPaS', {
  says: 'viscosity of air',
  symbol: 'μ',
  equation: '0.0266958·10^-6·√(28.9586·(t + 273.15))/(0.36^2·Ω)',
  inputs: { filmC: FILM, collisionRatio: ['Ω', 0.5, 2] },
  source: SOURCES['lemmon-jacobsen'],
  of: ({ filmC, collisionRatio }) => (0.0266958e-6 * Math.sqrt(28.9586 * (filmC + 273.15))) / (0.36 ** 2 * collisionRatio)
})

export const conductivityWPerMK = formula('conductivityWPerMK', {
  says: 'thermal conductivity of air',
  symbol: 'k',
  equation: '(1.308·10^6·μ + 1.405·((t + 273.15)/132.6312)^1.1 - 1.036·((t + 273.15)/132.6312)^0.3)/1000',
  inputs: { filmC: FILM, viscosityPaS: ['μ', 1e-5, 4e-5] },
  source: SOURCES['lemmon-jacobsen'],
  of: ({ filmC, viscosityPaS }) => {
    const reduced = (filmC + 273.15) / 132.6312
    return (1.308e6 * viscosityPaS + 1.405 * reduced ** 1.1 - 1.036 * reduced ** 0.3) / 1000
  }
})

export const kinematicM2PerS = formula('kinematicM2PerS', {
  says: 'kinematic viscosity of air',
  symbol: 'ν',
  equation: 'μ/ρ',
  inputs: { viscosityPaS: ['μ', 1e-5, 4e-5], densityKgPerM3: ['ρ', 0.1, 2.5] },
  source: SOURCES.arithmetic,
  of: ({ viscosityPaS, densityKgPerM3 }) => viscosityPaS / densityKgPerM3
})

export const diffusivityM2PerS = formula('diffusivityM2PerS', {
  says: 'thermal diffusivity of air',
  symbol: 'α',
  equation: 'k/(1006·ρ)',
  inputs: { conductivityWPerMK: ['k', 0.01, 0.06], densityKgPerM3: ['ρ', 0.1, 2.5] },
  source: SOURCES['air-heat'],
  of: ({ conductivityWPerMK, densityKgPerM3 }) => conductivityWPerMK / (1006 * densityKgPerM3)
})

export const prandtlRatio = formula('prandtlRatio', {
  says: 'Prandtl number of air',
  symbol: 'Pr',
  equation: 'ν/α',
  inputs: { kinematicM2PerS: ['ν', 4e-6, 4e-4], diffusivityM2PerS: ['α', 4e-6, 6e-4] },
  source: SOURCES.arithmetic,
  of: ({ kinematicM2PerS, diffusivityM2PerS }) => kinematicM2PerS / diffusivityM2PerS
})
