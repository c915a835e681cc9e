import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { THERMAL_MULTIPLIERS } from './breaker-styles.ts'
import type { LoadRow, ProtectionStyle } from './protection-style.ts'

export const allowedLoadA = formula('allowedLoadA', {
  says: 'load that a protector may carry on and on',
  symbol: 'Ip',
  equation: 'In·p/100',
  inputs: { ratingA: ['In', 0.1, 1000], sharePercent: ['p', 1, 120] },
  source: SOURCES.arithmetic,
  of: ({ ratingA, sharePercent }) => (ratingA * sharePercent) / 100
})

/** The load row at the next higher printed temperature: nothing is read between rows. Undefined above the hottest row. */
export function loadRow(
  style: ProtectionStyle,
  { ratingA, ambientC }: { readonly ratingA: number; readonly ambientC: number }
): LoadRow | undefined {
  const hotter = style.loads.filter(row => row.ambientC >= ambientC && (row.ratingA === null || row.ratingA === ratingA))
  const nearestC = Math.min(...hotter.map(row => row.ambientC))
  const rows = hotter.filter(row => row.ambientC === nearestC)
  const row = rows.find(row => row.ratingA === ratingA) ?? rows[0]
  if (row !== undefined) {
    const facts = fact('loadPercent', { says: 'share of the rating that may be used', symbol: 'p', source: row.source })
    recordStep(facts, row.loadPercent, () => `read at ${row.ambientC} °C`)
  }
  return row
}

/** What a thermal breaker holds in the cold, read at the next lower printed temperature: more than is written on it. Others keep their rating. */
export function coldRatingA(
  style: ProtectionStyle,
  { ratingA, ambientC }: { readonly ratingA: number; readonly ambientC: number }
): number {
  if (style.id !== 'thermal') return ratingA
  const row = THERMAL_MULTIPLIERS.filter(row => row.ambientC <= ambientC).at(-1)
  if (row === undefined)
    throw new OutsideRange('coldRatingA', 'ambientC', ambientC, THERMAL_MULTIPLIERS[0].ambientC, THERMAL_MULTIPLIERS[5].ambientC)
  return ratingA / row.factor
}
