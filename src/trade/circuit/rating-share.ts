import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const ratedSharePercent = formula('ratedSharePercent', {
  says: 'power in place, as a share of the rated power',
  symbol: 's',
  equation: '100·Q/P',
  inputs: { powerW: ['Q', 0, 1e12], ratedW: ['P', 1e-3, 1e6] },
  source: SOURCES.arithmetic,
  of: ({ powerW, ratedW }) => (100 * powerW) / ratedW
})
