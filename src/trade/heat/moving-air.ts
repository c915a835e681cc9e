import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Prandtl numbers of air. With the least Reynolds number below it keeps Re·Pr above the 0.2 that Churchill and Bernstein ask for. */
const OF_AIR = ['Pr', 0.67, 0.76] as const

export const reynoldsRatio = formula('reynoldsRatio', {
  says: 'Reynolds number',
  symbol: 'Re',
  equation: 'U·L/(1000·ν)',
  inputs: { airflowMPerS: ['U', 0, 150], sizeMm: ['L', 0.1, 2000], kinematicM2PerS: ['ν', 4e-6, 4e-4] },
  source: SOURCES.arithmetic,
  of: ({ airflowMPerS, sizeMm, kinematicM2PerS }) => (airflowMPerS * sizeMm) / (1000 * kinematicM2PerS)
})

export const cylinderNusseltRatio = formula('cylinderNusseltRatio', {
  says: 'Nusselt number of a cylinder across the flow, Churchill and Bernstein',
  symbol: 'Nu',
  equation: '0.3 + 0.62·Re^0.5·Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^0.25·(1 + (Re/282000)^0.625)^0.8',
  inputs: { reynoldsRatio: ['Re', 0.3, 1e7], prandtlRatio: OF_AIR },
  source: SOURCES['churchill-bernstein'],
  of: ({ reynoldsRatio, prandtlRatio }) =>
    0.3 +
    ((0.62 * reynoldsRatio ** 0.5 * prandtlRatio ** (1 / 3)) / (1 + (0.4 / prandtlRatio) ** (2 / 3)) ** 0.25) *
      (1 + (reynoldsRatio / 282000) ** 0.625) ** 0.8
})

export const hilpertNusseltRatio = formula('hilpertNusseltRatio', {
  says: 'Nusselt number of a cylinder across the flow, Hilpert',
  symbol: 'Nu',
  equation: 'C·Re^m·Pr^(1/3)',
  inputs: { coefficientFactor: ['C', 0.02, 1], exponentFactor: ['m', 0.3, 0.9], reynoldsRatio: ['Re', 0.4, 400000], prandtlRatio: OF_AIR },
  source: SOURCES.hilpert,
  of: ({ coefficientFactor, exponentFactor, reynoldsRatio, prandtlRatio }) =>
    coefficientFactor * reynoldsRatio ** exponentFactor * prandtlRatio ** (1 / 3)
})

export const laminarPlateNusseltRatio = formula('laminarPlateNusseltRatio', {
  says: 'mean Nusselt number of a flat plate along the flow, laminar',
  symbol: 'Nu',
  equation: '0.664·Re^0.5·Pr^(1/3)',
  inputs: { reynoldsRatio: ['Re', 100, 5e5], prandtlRatio: OF_AIR },
  source: SOURCES['flat-plate'],
  of: ({ reynoldsRatio, prandtlRatio }) => 0.664 * reynoldsRatio ** 0.5 * prandtlRatio ** (1 / 3)
})

export const plateNusseltRatio = formula('plateNusseltRatio', {
  says: 'mean Nusselt number of a flat plate along the flow, laminar at first, then turbulent',
  symbol: 'Nu',
  equation: '(0.037·Re^0.8 - 871)·Pr^(1/3)',
  inputs: { reynoldsRatio: ['Re', 5e5, 1e8], prandtlRatio: OF_AIR },
  source: SOURCES['flat-plate'],
  of: ({ reynoldsRatio, prandtlRatio }) => (0.037 * reynoldsRatio ** 0.8 - 871) * prandtlRatio ** (1 / 3)
})
