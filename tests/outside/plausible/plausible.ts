import { expect } from 'vitest'
import type { Cell } from './shipped-tables.ts'

/** How one table of the program is guarded. */
export interface Guard {
  readonly numbers: number
  /** The file that holds its values against published rows, one by one; null: no row was at hand. */
  readonly rows: string | null
  /** What any such table has to obey, whatever its values. */
  readonly plausible: (cells: Cell) => void
}

export type Guards = { readonly [id: string]: Guard }
type Step = string | number

/** The rows of a table, or the values of one that has names. */
export function rowsOf(cells: Cell): readonly Cell[] {
  if (Array.isArray(cells)) return cells
  if (typeof cells !== 'object' || cells === null) throw new Error(`${JSON.stringify(cells)} has no rows`)
  return Object.values(cells)
}

export function at(cell: Cell, ...path: readonly Step[]): Cell {
  return path.reduce<Cell>((found, step) => (found as { readonly [key: Step]: Cell })[step]!, cell)
}

/** The number there. */
export function numberAt(cell: Cell, ...path: readonly Step[]): number {
  const found = at(cell, ...path)
  if (typeof found !== 'number' || !Number.isFinite(found)) throw new Error(`${JSON.stringify(cell)} has no number at ${path.join('.')}`)
  return found
}

/** One column, from top to bottom, without the places where nothing is known. */
export function column(cells: Cell, ...path: readonly Step[]): readonly number[] {
  return rowsOf(cells)
    .filter(row => at(row, ...path) !== null)
    .map(row => numberAt(row, ...path))
}

export function rises(values: readonly number[], { level = false }: { readonly level?: boolean } = {}): void {
  expect(values.length).toBeGreaterThan(1)
  values.forEach((value, i) => {
    if (i > 0 && level) expect(value).toBeGreaterThanOrEqual(values[i - 1]!)
    if (i > 0 && !level) expect(value).toBeGreaterThan(values[i - 1]!)
  })
}

export function falls(values: readonly number[], how: { readonly level?: boolean } = {}): void {
  rises(values.toReversed(), how)
}

/** All of them stand in a series that a standard has. */
export function stands(values: readonly number[], series: readonly number[]): void {
  expect(values.filter(value => !series.includes(value))).toEqual([])
}

export function within(values: readonly number[], least: number, greatest: number): void {
  expect(values.length).toBeGreaterThan(0)
  for (const value of values) {
    expect(value).toBeGreaterThanOrEqual(least)
    expect(value).toBeLessThanOrEqual(greatest)
  }
}

/** One number of each row. */
export function each(cells: Cell, of: (row: Cell) => number): readonly number[] {
  return rowsOf(cells).map(of)
}
