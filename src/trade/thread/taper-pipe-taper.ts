import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { PIPE_TAPER_RATIO } from './taper-pipe.ts'

export const taperRatio = formula('taperRatio', {
  says: 'taper on the diameter, from the diameters at two places of the thread',
  symbol: 'C',
  equation: '(da - db)/l',
  inputs: { largeMm: ['da', 1, 300], smallMm: ['db', 1, 300], betweenMm: ['l', 0.5, 300] },
  source: SOURCES.geometry,
  of: ({ largeMm, smallMm, betweenMm }) => (largeMm - smallMm) / betweenMm
})

/** Flatter than this it may be wear, a bruised lead or the error of measuring: 0.1 mm over 5 mm (common practice). */
const PARALLEL_TO = 1 / 50
/** A taper measured over a few turns is good to about a quarter (common practice). */
const MEASURED_WITHIN = 0.25

export function taperKind(ratio: number): 'parallel' | 'pipe' | 'other' {
  const slope = Math.abs(ratio)
  if (slope <= PARALLEL_TO) return 'parallel'
  return Math.abs(slope / PIPE_TAPER_RATIO - 1) <= MEASURED_WITHIN ? 'pipe' : 'other'
}
