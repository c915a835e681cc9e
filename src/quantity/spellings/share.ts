import type { UnitTable } from '../unit-row.ts'

export const ANGLES = {
  '°': { is: 'deg', words: ['deg', 'degs', 'degree', 'degrees'] },
  rad: { is: 'rad', words: ['rad', 'rads', 'radian', 'radians'] }
} as const satisfies UnitTable

/** A share is never converted: it has one unit. */
export const PERCENTS = {
  '%': { is: '', words: ['percent', 'per cent', 'pct'] }
} as const satisfies UnitTable

export const COEFFICIENTS = {
  '%/K': { is: 'K^-1', times: '0.01', as: ['%/C'], words: ['percent/K'] },
  'ppm/K': { is: 'K^-1', times: '1e-6', as: ['ppm/C'] },
  '1/K': { is: 'K^-1', as: ['/K'] }
} as const satisfies UnitTable

export const TURNS = {
  turns: { is: '', words: ['turn', 'turns', 'rev', 'revs'] }
} as const satisfies UnitTable
