import { formula } from '../../formula/formula.ts'
import { SOURCES, type Source, type SourceId } from '../../formula/source.ts'

export interface PreloadScatter {
  readonly method: string
  /** The preload is this far off either way; where the source gives a range, its greater end. */
  readonly plusMinusPercent: number
  readonly leastPercent: number
  readonly source: Source
}

/** A guideline that prints the ratio of greatest to least preload says the same in another way. */
function percentOf(ratio: number): number {
  return (100 * (ratio - 1)) / (ratio + 1)
}

/** How far off the preload may be, by the way of tightening. */
export const PRELOAD_SCATTER: readonly PreloadScatter[] = (
  [
    ['by feel', 35, 35, 'scatter-handbook'],
    ['torque wrench', 25, 25, 'scatter-handbook'],
    ['turn of nut', 15, 15, 'scatter-handbook'],
    ['preload-indicating washer', 10, 10, 'scatter-handbook'],
    ['bolt elongation', 3, 5, 'scatter-handbook'],
    ['strain gauges', 1, 1, 'scatter-handbook'],
    ['torque, unlubricated', 35, 35, 'scatter-nasa'],
    ['torque, cadmium plated', 30, 30, 'scatter-nasa'],
    ['torque, lubricated', 25, 25, 'scatter-nasa'],
    ['hydraulic tensioner', 15, 15, 'scatter-nasa'],
    ['preload-indicating washer', 10, 10, 'scatter-nasa'],
    ['ultrasonic', 10, 10, 'scatter-nasa'],
    ['bolt elongation', 5, 5, 'scatter-nasa'],
    ['instrumented bolt', 5, 5, 'scatter-nasa'],
    ['yield- or angle-controlled', 5, 12, 'scatter-vdi-1986'],
    ['hydraulic', 9, 23, 'scatter-vdi-1986'],
    ['torque wrench, torque found by test', 17, 23, 'scatter-vdi-1986'],
    ['torque wrench, friction estimated', 23, 28, 'scatter-vdi-1986'],
    ['precision power screwdriver', 26, 43, 'scatter-vdi-1986'],
    ['torque wrench, friction estimated (alpha_A 1.6 to 2.0)', percentOf(1.6), percentOf(2), 'scatter-vdi']
  ] satisfies [string, number, number, SourceId][]
).map(([method, leastPercent, plusMinusPercent, id]) => ({ method, plusMinusPercent, leastPercent, source: SOURCES[id] }))

export const tighteningFactor = formula('tighteningFactor', {
  says: 'greatest preload over least',
  symbol: 'αA',
  equation: '(100 + x)/(100 - x)',
  inputs: { plusMinusPercent: ['x', 0, 90] },
  source: SOURCES.arithmetic,
  of: ({ plusMinusPercent }) => (100 + plusMinusPercent) / (100 - plusMinusPercent)
})
