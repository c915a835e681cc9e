import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** As a film coefficient, so that it adds to the one of the air. Not to be used where a hot part stands close by: it is for large surroundings. */
export const radiationWPerM2K = formula('radiationWPerM2K', {
  says: 'radiation to surroundings as a film coefficient',
  symbol: 'hr',
  equation: '5.670374·10^-8·ε·((ts + 273.15)^2 + (ta + 273.15)^2)·((ts + 273.15) + (ta + 273.15))',
  inputs: { emissivityRatio: ['ε', 0, 1], surfaceC: ['ts', -100, 1000], airC: ['ta', -100, 1000] },
  source: SOURCES['grey-body'],
  of: ({ emissivityRatio, surfaceC, airC }) =>
    5.670374e-8 * emissivityRatio * ((surfaceC + 273.15) ** 2 + (airC + 273.15) ** 2) * (surfaceC + 273.15 + (airC + 273.15))
})
