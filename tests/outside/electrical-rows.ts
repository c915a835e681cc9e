import { describe, expect, it } from 'vitest'
import type { ElectricalRow } from './rows/electrical-row.ts'

/** How the program answers the rows of one kind. `within` is the half of the last digit that the source printed, or says why not. */
export interface Answer {
  readonly rows: RegExp | readonly string[]
  readonly gives: (row: ElectricalRow) => number | string | null
  readonly within?: number
}

function answers({ rows }: Answer, row: ElectricalRow): boolean {
  return rows instanceof RegExp ? rows.test(`${row.quantity}; ${row.item}; ${row.condition}`) : rows.includes(row.id)
}

/** Every row is answered once, or left out for a reason that is given. */
export function checkRows(
  name: string,
  rows: readonly ElectricalRow[],
  table: readonly Answer[],
  leftOut: Readonly<Record<string, string>>
): void {
  describe(name, () => {
    it('answers each row once or says why not', () => {
      const times = rows.map(row => ({
        id: row.id,
        times: table.filter(answer => answers(answer, row)).length + (row.id in leftOut ? 1 : 0)
      }))
      expect(times.filter(row => row.times !== 1)).toEqual([])
      expect(Object.keys(leftOut).filter(id => !rows.some(row => row.id === id))).toEqual([])
    })
    for (const answer of table)
      for (const row of rows.filter(row => answers(answer, row)))
        it(`${row.id} ${row.quantity}, ${row.item || row.condition || row.unit} [${row.source} (${row.label})]`, () => {
          const given = answer.gives(row)
          if (typeof row.value === 'string' || typeof given !== 'number') expect(given).toBe(row.value)
          else expect(Math.abs(given - row.value)).toBeLessThanOrEqual((answer.within ?? 0) + 1e-9)
        })
  })
}

/** `AWG 00` → −1. */
export function awgIn(text: string): number {
  const digits = /AWG (\d+)/.exec(text)![1]!
  return /^0/.test(digits) ? 1 - digits.length : Number(digits)
}

/** The first number in a text. */
export function numberIn(text: string): number {
  return Number(/-?\d+(\.\d+)?/.exec(text)![0])
}
