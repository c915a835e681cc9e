import { type Swept, sweptRows } from './swept.ts'

/** Comma-separated values as RFC 4180 has them, unrounded, with the units in the heading. */
export function sweepCsv(swept: Swept): string {
  const rows = sweptRows(swept)
  const keys = Object.keys(rows[0] ?? {})
  const units = new Map(swept.results.flatMap(({ id, unit }) => [id, `${id} low`, `${id} high`].map(key => [key, unit] as const)))
  const heading = keys.map(key => (key === 'value' ? withUnit(swept.field, swept.unit) : withUnit(key, units.get(key) ?? '')))
  return [heading, ...rows.map(row => keys.map(key => String(row[key] ?? '')))].map(cells => `${cells.map(cell).join(',')}\r\n`).join('')
}

function withUnit(name: string, unit: string): string {
  return unit === '' ? name : `${name} [${unit}]`
}

function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
