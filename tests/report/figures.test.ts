// table: what a cell of a table prints
import { expect, it } from 'vitest'
import { cellText } from '../../src/report/figures.ts'

const column = { key: 'value', name: 'reading', unit: '' } as const

it.each([
  [{ value: null }, {}, '—'],
  [{ value: true }, {}, 'yes'],
  [{ value: 'left+' }, {}, 'left+'],
  [{ value: 1.5 }, {}, '1.5'],
  [{ value: 26.412, unit: 'V' }, { shown: 'reading', unitIn: 'unit' }, '26.41 V'],
  [{ value: 0.021504, unit: 'V' }, { shown: 'reading', unitIn: 'unit' }, '0.0215 V'],
  [{ value: 2.5, unit: '' }, { shown: 'reading', unitIn: 'unit' }, '2.50'],
  [{}, { unitIn: 'unit' }, '—']
] as const)('%j as %j: %s', (row, more, text) => expect(cellText(row, { ...column, ...more })).toBe(text))
