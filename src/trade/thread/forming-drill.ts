import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The thread height a forming tap is drilled for. */
export const FORMED_PERCENT = 65

/** The hole itself, not a drill of a set. */
export const formingDrillMm = formula('formingDrillMm', {
  says: 'hole for a forming tap',
  symbol: 'h',
  equation: 'D - P·k/147.06',
  inputs: { majorMm: ['D', 1, 300], pitchMm: ['P', 0.2, 8], formedPercent: ['k', 50, 100] },
  source: SOURCES['forming-tap'],
  of: ({ majorMm, pitchMm, formedPercent }) => majorMm - (pitchMm * formedPercent) / 147.06
})
