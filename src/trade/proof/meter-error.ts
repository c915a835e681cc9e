import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** ± (1 % + 2 digits) at 100.0 V is ± 1.2 V: a digit is one step of the last figure shown. */
export const meterErrorV = formula('meterErrorV', {
  says: 'how far a reading of volts may be off',
  symbol: 'e',
  equation: 'p/100·U + n·d',
  inputs: { shownV: ['U', 0, 1000], accuracyPercent: ['p', 0, 100], digitsCount: ['n', 0, 1000], resolutionV: ['d', 0, 100] },
  source: SOURCES['meter-accuracy'],
  of: ({ shownV, accuracyPercent, digitsCount, resolutionV }) => (accuracyPercent / 100) * shownV + digitsCount * resolutionV
})

export const meterErrorA = formula('meterErrorA', {
  says: 'how far a reading of amps may be off',
  symbol: 'e',
  equation: 'p/100·I + n·d',
  inputs: { shownA: ['I', 0, 1e5], accuracyPercent: ['p', 0, 100], digitsCount: ['n', 0, 1000], resolutionA: ['d', 0, 100] },
  source: SOURCES['meter-accuracy'],
  of: ({ shownA, accuracyPercent, digitsCount, resolutionA }) => (accuracyPercent / 100) * shownA + digitsCount * resolutionA
})

export const meterErrorOhm = formula('meterErrorOhm', {
  says: 'how far a reading of ohms may be off',
  symbol: 'e',
  equation: 'p/100·R + n·d',
  inputs: { shownOhm: ['R', 0, 1e9], accuracyPercent: ['p', 0, 100], digitsCount: ['n', 0, 1000], resolutionOhm: ['d', 0, 1e6] },
  source: SOURCES['meter-accuracy'],
  of: ({ shownOhm, accuracyPercent, digitsCount, resolutionOhm }) => (accuracyPercent / 100) * shownOhm + digitsCount * resolutionOhm
})
