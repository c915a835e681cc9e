import { inchOf, showNumber, showSpread } from '../quantity/show.ts'
import type { Column, Result, Table } from './answer.ts'

/** The value of a result with its unit; a dash where there is no answer. */
export function valueText({ value, unit, shown, inch, beside }: Pick<Result, 'value' | 'unit' | 'shown' | 'inch' | 'beside'>): string {
  if (value === null) return '—'
  if (typeof value === 'string') return value
  const second = beside ?? (inch === true ? `${inchOf(value)} in` : undefined)
  return `${withUnit(showNumber(value, shown), unit)}${second === undefined ? '' : ` (${second})`}`
}

/** Both ends with the unit once; empty where nothing spreads. An open end has no answer. */
export function spreadText(
  { low, high }: { readonly low: number | null; readonly high: number | null },
  { unit, shown }: Pick<Result, 'unit' | 'shown'>
): string {
  if (low === null && high === null) return ''
  if (low === null || high === null)
    return `${low === null ? '—' : showNumber(low, shown)} to ${high === null ? '—' : showNumber(high, shown)}`
  return withUnit(showSpread(low, high, shown), unit)
}

export function cellText(row: Table['rows'][number], { key, shown, unitIn }: Column): string {
  const value = row[key] ?? null
  if (value === null) return '—'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return typeof value === 'string' ? value : withUnit(showNumber(value, shown ?? 'plain'), String(row[unitIn ?? ''] ?? ''))
}

function withUnit(text: string, unit: string): string {
  return unit === '' ? text : `${text} ${unit}`
}
