import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Of bounds, and of what a meter may be off: anything inside is as likely as anything else, so the spread is that of an even one. */
export const deviationRatio = formula('deviationRatio', {
  says: 'standard deviation of what may be anywhere within a half-width',
  symbol: 's',
  equation: 'a/√(3)',
  inputs: { halfWidthRatio: ['a', 0, 1e12] },
  source: SOURCES.gum,
  of: ({ halfWidthRatio }) => halfWidthRatio / Math.sqrt(3)
})
