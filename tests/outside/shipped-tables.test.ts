// property: every table of numbers in the trade has its guard: published rows where there are some, and what any such table obeys
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { CIRCUIT } from './plausible/circuit.ts'
import { HEAT } from './plausible/heat.ts'
import { JOINT } from './plausible/joint.ts'
import { PROOF } from './plausible/proof.ts'
import { importedBy } from './plausible/reaches.ts'
import { shippedTables, tablesIn } from './plausible/shipped-tables.ts'
import { THREAD } from './plausible/thread.ts'

const GUARDS = { ...CIRCUIT, ...HEAT, ...JOINT, ...PROOF, ...THREAD }
const tables = shippedTables()

it('shipped data: no table without a guard, no guard without a table', () => {
  expect(tables.map(({ id }) => id)).toEqual(expect.arrayContaining(Object.keys(GUARDS)))
  expect(tables.map(({ id }) => id).filter(id => !(id in GUARDS))).toEqual([])
})

describe.each(tables.filter(({ id }) => id in GUARDS))('shipped data: $id', ({ id, cells, count }) => {
  const { numbers, rows, plausible } = GUARDS[id]!
  it('has all its numbers', () => {
    expect(count).toBe(numbers)
  })
  it('is plausible', () => {
    plausible(cells)
  })
  if (rows === null) return
  it('is held against published rows', () => {
    const file = `tests/outside/${rows}`
    expect(readFileSync(file, 'utf8')).toMatch(/\.\/rows\/|\(memory/)
    expect([...importedBy(file)]).toContain(`src/trade/${id.split(' ')[0]}`)
  })
})

it('shipped data: finds a table that nobody exports, and none in the range of a formula', () => {
  const text = `const ROWS = [[1, 2], [3, -4 / 8]] as const
    export const aMm = formula('aMm', { inputs: { bMm: ['b', 1, 2], cMm: ['c', 3, 4] } })
    const FEW = [1, 2, 3]`
  expect(tablesIn('x.ts', text)).toEqual([
    {
      id: 'x.ts ROWS',
      cells: [
        [1, 2],
        [3, -0.5]
      ],
      count: 5
    }
  ])
})
