// Table: nut factors against printed ones.
import { expect, test } from 'vitest'
import { NUT_FACTORS, usualNutFactor } from '../../src/trade/joint/nut-factors.ts'
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

// What is on the threads, and the row as printed that stands for it; halfway where the row is a range.
test.each([
  ['nothing', 'dry steel on dry steel', 0.225],
  ['oil', 'machine oil on steel', 0.18],
  ['anti-seize', 'with anti-seize compound (a named brand)', 0.12]
])('with %s on them: %s', (threadsWith, threads, halfway) => {
  const found = usualNutFactor(threadsWith)
  expect(found?.threads).toBe(threads)
  expect(found?.nutFactor).toBeCloseTo(halfway, 12)
})

test.each(['thermal compound', 'sealant', 'threadlocker', ''])('no nut factor was found for "%s"', threadsWith => {
  expect(usualNutFactor(threadsWith)).toBeNull()
})
