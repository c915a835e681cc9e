/** A figure from outside: what it is, under which conditions, how far off a right answer may be, and whence it comes with its label. */
export interface ThermalRow {
  readonly id: string
  readonly quantity: string
  readonly conditions: string
  /** As the source prints it. */
  readonly value: string
  readonly unit: string
  readonly tolerance: string
  readonly source: string
  readonly label: 'read' | 'read-secondary' | 'memory' | 'common practice'
}

type OfMany = Omit<ThermalRow, 'id' | 'conditions' | 'value'>

/** Rows that share all but their conditions. */
export function rowsOf(shared: OfMany, rows: readonly (readonly [id: string, conditions: string, value: string])[]): ThermalRow[] {
  return rows.map(([id, conditions, value]) => ({ id, conditions, value, ...shared }))
}

/** The number that stands behind a letter in the conditions: `t=-10 C; RH=80 %`. */
export function given({ conditions, id }: ThermalRow, letter: string): number {
  const found = new RegExp(`(?:^|[^A-Za-z])${letter}=(-?[0-9.]+(?:e-?[0-9]+)?)`).exec(conditions)
  if (found === null) throw new Error(`${id}: no ${letter} in the conditions`)
  return Number(found[1])
}

/** How far off an answer by the same method may be: `0.5 %`, `0.001 Pa`, `1e-4`, or one in the last digit printed. */
export function allowance({ tolerance, value, id }: ThermalRow): number {
  if (tolerance.endsWith('last digit')) return 10 ** -(value.split('.')[1] ?? '').length
  const number = Number.parseFloat(tolerance)
  if (Number.isNaN(number)) throw new Error(`${id}: no tolerance`)
  return tolerance.includes('%') ? (number / 100) * Math.abs(Number(value)) : number
}

/** Rows of which the id begins so. */
export function named(rows: readonly ThermalRow[], ...beginnings: readonly string[]): readonly ThermalRow[] {
  const found = rows.filter(({ id }) => beginnings.some(beginning => id.startsWith(beginning)))
  if (found.length === 0) throw new Error(`no row begins with ${beginnings.join(' or ')}`)
  return found
}

/** One row. */
export function rowOf(rows: readonly ThermalRow[], id: string): ThermalRow {
  const row = rows.find(candidate => candidate.id === id)
  if (row === undefined) throw new Error(`no row ${id}`)
  return row
}

/** The figure of one row. */
export function figureOf(rows: readonly ThermalRow[], id: string): number {
  return Number(rowOf(rows, id).value)
}
