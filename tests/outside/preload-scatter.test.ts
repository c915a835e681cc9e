// Table: preload scatter by method, against printed figures. The ratio of greatest to least is printed to two decimals.
import { expect, test } from 'vitest'
import { PRELOAD_SCATTER, tighteningFactor } from '../../src/trade/joint/preload-scatter.ts'
import { SCATTER_ROWS } from './rows/joint-preload-scatter.ts'

const ROWS = SCATTER_ROWS.filter(({ plusMinusPercent }) => plusMinusPercent !== null)

test('as many methods as rows', () => {
  expect(PRELOAD_SCATTER.length).toBe(SCATTER_ROWS.length)
})

// The last row gives only a span of the ratio, and no percent.
test('torque wrench, friction estimated: greatest over least 1.6 to 2.0', () => {
  const { method, leastPercent, plusMinusPercent, source } = PRELOAD_SCATTER.at(-1)!
  const { alpha, ...row } = SCATTER_ROWS.at(-1)!
  expect([method, source.label]).toEqual([row.method, row.label])
  const ratios = [leastPercent, plusMinusPercent].map(percent => tighteningFactor({ plusMinusPercent: percent }))
  expect(ratios.map(ratio => Number(ratio.toFixed(9)))).toEqual(alpha.split('-').map(Number))
})

test.each(ROWS.map((row, i) => ({ ...row, i })))('$method, $source', row => {
  const { method, plusMinusPercent, leastPercent, source } = PRELOAD_SCATTER[row.i]!
  expect([method, plusMinusPercent, source.label]).toEqual([row.method, row.plusMinusPercent, row.label])
  if (row.rangePercent !== '') expect(`${leastPercent} to ${plusMinusPercent}`).toBe(row.rangePercent)
  expect(Math.abs(tighteningFactor({ plusMinusPercent }) - Number(row.alpha))).toBeLessThanOrEqual(0.0051)
})
