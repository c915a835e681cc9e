// table: a hole against the greatest minor diameter of its thread; the numbers are invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { wideOf } from '../../../src/trade/hole/wide.ts'

const about = (value: number, off = 0) => new Given(value, { low: value - off, high: value + off })

it.each([
  ['both inside', about(9.5, 0.2), 10.5, null],
  ['at the limit', about(9.5), 10.676, null],
  ['the drill', about(9.5), 11.9, { widestMm: 11.9, sure: true }],
  ['the old hole, perhaps', about(10.5, 0.3), 10.5, { widestMm: 10.8, sure: false }],
  ['the old hole', about(11, 0.1), 10.5, { widestMm: 11.1, sure: true }]
])('%s', (_, foundDiameterMm, drillMm, wide) => {
  const found = wideOf({ foundDiameterMm, drillMm: about(drillMm), minorMaxMm: 10.676 })
  expect(found).toEqual(wide === null ? null : { ...wide, minorMaxMm: 10.676 })
})
