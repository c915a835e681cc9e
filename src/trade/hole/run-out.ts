import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'

/** Drilled depth beyond the usable thread, by pitch: DIN 76-1, regular, e1 (read-secondary). */
const REGULAR = [
  { pitchMm: 0.2, runOutMm: 1.3 },
  { pitchMm: 0.25, runOutMm: 1.5 },
  { pitchMm: 0.3, runOutMm: 1.8 },
  { pitchMm: 0.35, runOutMm: 2.1 },
  { pitchMm: 0.4, runOutMm: 2.3 },
  { pitchMm: 0.45, runOutMm: 2.6 },
  { pitchMm: 0.5, runOutMm: 2.8 },
  { pitchMm: 0.6, runOutMm: 3.4 },
  { pitchMm: 0.7, runOutMm: 3.8 },
  { pitchMm: 0.75, runOutMm: 4 },
  { pitchMm: 0.8, runOutMm: 4.2 },
  { pitchMm: 1, runOutMm: 5.1 },
  { pitchMm: 1.25, runOutMm: 6.2 },
  { pitchMm: 1.5, runOutMm: 7.3 },
  { pitchMm: 1.75, runOutMm: 8.3 },
  { pitchMm: 2, runOutMm: 9.3 },
  { pitchMm: 2.5, runOutMm: 11.2 },
  { pitchMm: 3, runOutMm: 13.1 },
  { pitchMm: 3.5, runOutMm: 15.2 },
  { pitchMm: 4, runOutMm: 16.8 },
  { pitchMm: 4.5, runOutMm: 18.4 },
  { pitchMm: 5, runOutMm: 20.8 },
  { pitchMm: 5.5, runOutMm: 22.4 },
  { pitchMm: 6, runOutMm: 24 }
] as const

const RUN_OUT = fact('runOutMm', { says: 'regular run-out of a blind hole', symbol: 'e1', source: SOURCES['din-76-1'] })

/** Inch pitches come as near as 8 parts in a thousand to a metric one; an assumed pitch is nudged by 1 when its bounds are worked out. */
const SAME = 0.002

/** The standard's regular run-out for a metric pitch; null for a pitch that is not in its table. */
export function runOutMm(pitchMm: number): number | null {
  const row = REGULAR.find(each => Math.abs(each.pitchMm - pitchMm) <= SAME * pitchMm)
  if (row === undefined) return null
  recordStep(RUN_OUT, row.runOutMm, () => `pitch ${pitchMm}`)
  return row.runOutMm
}
