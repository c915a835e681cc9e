import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep, silently } from '../../formula/working.ts'
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
  const row = rowNear(style, ratingA, rows => Math.min(...rows.filter(one => one >= ambientC)))
  if (row !== undefined) {
    const facts = fact('loadPercent', { says: 'share of the rating that may be used', symbol: 'p', source: row.source })
    recordStep(facts, row.loadPercent, () => `read at ${row.ambientC} °C`)
  }
  return row
}

/** Of all that is printed for a rating, the row at one of the temperatures; the one of just this rating goes first. */
function rowNear({ loads }: ProtectionStyle, ratingA: number, pick: (ambientC: readonly number[]) => number): LoadRow | undefined {
  const printed = loads.filter(row => row.ratingA === null || row.ratingA === ratingA)
  const atC = pick(printed.map(row => row.ambientC))
  const rows = printed.filter(row => row.ambientC === atC)
  return rows.find(row => row.ratingA === ratingA) ?? rows[0]
}

/** What a protector may carry, and where that was read. */
export interface AllowedLoad {
  /** Null where nothing is printed for a place so hot. */
  readonly allowedA: number | null
  readonly readC: number | null
  /** By the row at the next lower printed temperature: the same row where one is printed for just this temperature, or none below it. */
  readonly coolerA: number
  readonly coolerC: number
}

/** Null where no row is printed for it. */
export function allowedLoad(style: ProtectionStyle, x: { readonly ratingA: number; readonly ambientC: number }): AllowedLoad | null {
  const { ratingA, ambientC } = x
  const row = loadRow(style, x)
  const cooler = rowNear(style, ratingA, rows => Math.max(...rows.filter(one => one <= ambientC))) ?? row
  if (cooler === undefined) return null
  const allowedOf = ({ loadPercent }: LoadRow) => allowedLoadA({ ratingA, sharePercent: loadPercent })
  const coolerA = silently(() => allowedOf(cooler))
  return { allowedA: row === undefined ? null : allowedOf(row), readC: row?.ambientC ?? null, coolerA, coolerC: cooler.ambientC }
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

/** What any protector holds for good at the least: its rating, a thermal breaker in the cold more. Colder than printed it holds what it does at the coldest row, or more. */
export function leastHeldA(style: ProtectionStyle, x: { readonly ratingA: number; readonly ambientC: number }): number {
  const ambientC = Math.max(x.ambientC, THERMAL_MULTIPLIERS[0].ambientC)
  return Math.max(x.ratingA, coldRatingA(style, { ratingA: x.ratingA, ambientC }))
}
