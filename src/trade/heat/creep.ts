import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** 0 °C in kelvin. */
const ZERO_K = 273.15

export const softensC = formula('softensC', {
  says: 'half of the melting temperature in kelvin: from there on a metal creeps under load',
  symbol: 'Th',
  equation: '(Tm + 273.15)/2 - 273.15',
  inputs: { meltsC: ['Tm', 200, 1600] },
  source: SOURCES['melting-points'],
  of: ({ meltsC }) => (meltsC + ZERO_K) / 2 - ZERO_K
})
