// Table: nut factors against printed ones.
import { expect, test } from 'vitest'
import { NUT_FACTORS } from '../../src/trade/joint/nut-factors.ts'
import { NUT_FACTOR_ROWS } from './rows/joint-nut-factors.ts'

test('as many as rows', () => {
  expect(NUT_FACTORS.length).toBe(NUT_FACTOR_ROWS.length)
})

test.each(NUT_FACTOR_ROWS)('$threads ($label)', row => {
  const found = NUT_FACTORS.find(({ threads }) => threads === row.threads)
  expect(found?.source.label).toBe(row.label)
  expect([found?.leastFactor, found?.greatestFactor]).toEqual([row.least ?? row.nutFactor, row.greatest ?? row.nutFactor])
  if (row.nutFactor !== null) expect(found?.nutFactor).toBe(row.nutFactor)
})
