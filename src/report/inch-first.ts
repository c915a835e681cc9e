import { DIGITS, type Shown } from '../quantity/digits.ts'
import { inUnit } from '../quantity/in-unit.ts'
import { showNumber } from '../quantity/show.ts'
import type { Answer, Column, Result, Table } from './answer.ts'

interface InchUnit {
  readonly unit: string
  readonly told: (house: number) => number
  readonly shown: (shown: Shown) => Shown
}

const same = (shown: Shown): Shown => shown

const INCH: { readonly [house: string]: InchUnit } = {
  mm: { unit: 'in', told: mm => inUnit('length', 'in', mm), shown: inchSide },
  m: { unit: 'ft', told: m => inUnit('run', 'ft', m), shown: same },
  'mm²': { unit: 'in²', told: mm2 => inUnit('area', 'in²', mm2), shown: same },
  'm²': { unit: 'ft²', told: m2 => inUnit('surface', 'ft²', m2), shown: same },
  N: { unit: 'lbf', told: n => inUnit('force', 'lbf', n), shown: same },
  N·m: { unit: 'lbf·in', told: nm => inUnit('torque', 'lbf·in', nm), shown: same },
  MPa: { unit: 'psi', told: mpa => inUnit('stress', 'psi', mpa), shown: same },
  Pa: { unit: 'inHg', told: pa => inUnit('pressure', 'inHg', pa), shown: same },
  kg: { unit: 'lb', told: kg => inUnit('mass', 'lb', kg), shown: same },
  '°C': { unit: '°F', told: c => inUnit('temperature', '°F', c), shown: same },
  K: { unit: 'Δ°F', told: k => inUnit('difference', 'Δ°F', k), shown: same },
  'm/s': { unit: 'ft/s', told: mps => inUnit('speed', 'ft/s', mps), shown: same }
}

/** An arm of a mass is told in inches, a run of wire in feet. */
const ARM: InchUnit = { unit: 'in', told: m => inUnit('run', 'in', m), shown: same }

function inchUnit({ unit, shown }: { readonly unit: string; readonly shown?: Shown }): InchUnit | undefined {
  return unit === 'm' && shown?.startsWith('arm') === true ? ARM : INCH[unit]
}

/** The careful side of rounding stays the careful one. */
function inchSide(shown: Shown): Shown {
  const { side } = DIGITS[shown]
  return side === 'nearest' ? 'inch' : `inch-${side}`
}

/** An answer whose tables show inch units first, metric ones after them. Sentences and drawings stay as they are. */
export function inchFirst(answer: Answer): Answer {
  const tables = Object.entries(answer.tables).map(([name, table]) => [name, inchTable(table)] as const)
  return { ...answer, results: answer.results.map(inchResult), tables: Object.fromEntries(tables) }
}

type Figure = Pick<Result, 'value' | 'low' | 'high' | 'unit' | 'shown'>

/** A figure told in its inch unit; one that has none, or is named for its unit, stays. */
export function inInches<F extends Figure>(figure: F): F {
  const inch = inchUnit(figure)
  if (inch === undefined) return figure
  const { value, low, high, shown } = figure
  const told = (house: number | null) => (house === null ? null : inch.told(house))
  return {
    ...figure,
    value: typeof value === 'number' ? inch.told(value) : value,
    low: told(low),
    high: told(high),
    unit: inch.unit,
    shown: inch.shown(shown)
  }
}

function inchResult(result: Result): Result {
  const { value, unit, shown, rss, ownUnit } = result
  const inch = inchUnit(result)
  if (inch === undefined || ownUnit === true || typeof value !== 'number') return result
  const ends = rss === null ? null : ([inch.told(rss[0]), inch.told(rss[1])] as const)
  return { ...inInches(result), rss: ends, beside: `${showNumber(value, shown)} ${unit}` }
}

/** A table that has both already shows its inches first. A curve keeps its axes. */
function inchTable(table: Table): Table {
  if (table.plot !== undefined) return table
  const units = table.columns.map(({ unit }) => unit)
  const twin = (column: Column) => units.includes(inchUnit(column)?.unit ?? 'none')
  const told = table.columns.filter(column => inchUnit(column) !== undefined && !twin(column))
  const rows = table.rows.map(row => ({
    ...row,
    ...Object.fromEntries(told.map(column => [column.key, toldCell(row[column.key], column)]))
  }))
  return { ...table, columns: swapped(table.columns, twin).map(column => (told.includes(column) ? inchColumn(column) : column)), rows }
}

function toldCell(cell: number | string | boolean | null | undefined, column: Column): number | string | boolean | null {
  return typeof cell === 'number' ? inchUnit(column)!.told(cell) : (cell ?? null)
}

function inchColumn(column: Column): Column {
  const inch = inchUnit(column)!
  return { ...column, unit: inch.unit, shown: inch.shown(column.shown ?? 'plain') }
}

/** Columns in metric units change places with their twins in inches. */
function swapped(columns: readonly Column[], twin: (column: Column) => boolean): readonly Column[] {
  const order = [...columns]
  for (const metric of columns.filter(twin)) {
    const inch = columns.find(({ unit, name }) => unit === inchUnit(metric)!.unit && name === metric.name)
    if (inch === undefined) continue
    const [from, to] = [order.indexOf(metric), order.indexOf(inch)]
    if (from < to) [order[from], order[to]] = [inch, metric]
  }
  return order
}
