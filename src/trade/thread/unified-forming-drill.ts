import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The hole itself, not a drill of a set. With one inch over the threads to the inch for the pitch, this is the rule of inch charts. */
export const unifiedFormingDrillMm = formula('unifiedFormingDrillMm', {
  says: 'hole for a forming tap, by the inch rule',
  symbol: 'h',
  equation: 'D - 0.0068·k·P',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7], formedPercent: ['k', 50, 100] },
  source: SOURCES['forming-tap'],
  of: ({ majorMm, pitchMm, formedPercent }) => majorMm - 0.0068 * formedPercent * pitchMm
})
