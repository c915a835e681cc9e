import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

const OF_AIR = ['Pr', 0.67, 0.76] as const

/** The air expands as an ideal gas: 1/T of the film. */
export const rayleighRatio = formula('rayleighRatio', {
  says: 'Rayleigh number',
  symbol: 'Ra',
  equation: '9.81·θ·(L/1000)^3/((t + 273.15)·ν·α)',
  inputs: {
    gapK: ['θ', 0, 600],
    sizeMm: ['L', 0.1, 2000],
    filmC: ['t', -60, 200],
    kinematicM2PerS: ['ν', 4e-6, 4e-4],
    diffusivityM2PerS: ['α', 4e-6, 6e-4]
  },
  source: SOURCES['churchill-chu'],
  of: ({ gapK, sizeMm, filmC, kinematicM2PerS, diffusivityM2PerS }) =>
    (9.81 * gapK * (sizeMm / 1000) ** 3) / ((filmC + 273.15) * kinematicM2PerS * diffusivityM2PerS)
})

export const verticalPlateNusseltRatio = formula('verticalPlateNusseltRatio', {
  says: 'Nusselt number of a vertical plate in still air, Churchill and Chu',
  symbol: 'Nu',
  equation: '(0.825 + 0.387·Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))^2',
  inputs: { rayleighRatio: ['Ra', 0, 1e12], prandtlRatio: OF_AIR },
  source: SOURCES['churchill-chu'],
  of: ({ rayleighRatio, prandtlRatio }) =>
    (0.825 + (0.387 * rayleighRatio ** (1 / 6)) / (1 + (0.492 / prandtlRatio) ** (9 / 16)) ** (8 / 27)) ** 2
})

export const horizontalCylinderNusseltRatio = formula('horizontalCylinderNusseltRatio', {
  says: 'Nusselt number of a horizontal cylinder in still air, Churchill and Chu',
  symbol: 'Nu',
  equation: '(0.60 + 0.387·Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))^2',
  inputs: { rayleighRatio: ['Ra', 0, 1e12], prandtlRatio: OF_AIR },
  source: SOURCES['churchill-chu'],
  of: ({ rayleighRatio, prandtlRatio }) =>
    (0.6 + (0.387 * rayleighRatio ** (1 / 6)) / (1 + (0.559 / prandtlRatio) ** (9 / 16)) ** (8 / 27)) ** 2
})

/** How much the air rises by itself beside being blown: Gr/Re². */
export const buoyancyRatio = formula('buoyancyRatio', {
  says: 'natural against forced convection',
  symbol: 'B',
  equation: 'Ra/(Pr·Re^2)',
  inputs: { rayleighRatio: ['Ra', 0, 1e12], prandtlRatio: OF_AIR, reynoldsRatio: ['Re', 0.3, 1e8] },
  source: SOURCES['mixed-convection'],
  of: ({ rayleighRatio, prandtlRatio, reynoldsRatio }) => rayleighRatio / (prandtlRatio * reynoldsRatio ** 2)
})

/** Exponent 3 for plates, 4 for cylinders. For air blown with or across the rise; against it the film is less. */
export const mixedNusseltRatio = formula('mixedNusseltRatio', {
  says: 'Nusselt number of natural and forced convection together',
  symbol: 'Nu',
  equation: '(Nf^n + Nn^n)^(1/n)',
  inputs: { forcedRatio: ['Nf', 0.1, 1e6], naturalRatio: ['Nn', 0.1, 1e6], exponentFactor: ['n', 3, 4] },
  source: SOURCES['mixed-convection'],
  of: ({ forcedRatio, naturalRatio, exponentFactor }) =>
    (forcedRatio ** exponentFactor + naturalRatio ** exponentFactor) ** (1 / exponentFactor)
})
