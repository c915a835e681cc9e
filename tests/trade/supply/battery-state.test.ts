// property: what a voltage tells of the charge.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { chargeBand } from '../../../src/trade/supply/battery-state.ts'

const at = (readV: number, batteryC = 26.7) => chargeBand({ readV, batteryC })

it('stays between empty and full, and never tells more than a wide band', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 13.5, noNaN: true }), readV => {
      const { lowPercent, highPercent } = at(readV)
      expect(lowPercent).toBeGreaterThanOrEqual(0)
      expect(highPercent).toBeLessThanOrEqual(100)
      expect(highPercent - lowPercent).toBeGreaterThanOrEqual(15)
    })
  )
})

it('holds the printed charge in its middle', () => {
  // 12.24 V is 50 % (a battery maker's table, read).
  expect(at(12.24)).toMatchObject({ lowPercent: 35, highPercent: 65 })
})

it('finds a cold battery emptier than its reading', () => {
  expect(at(12.5, -1.1).highPercent).toBeLessThan(at(12.5).highPercent)
})

it.each([9.99, 13.51])('refuses %d V: no battery at rest', readV => {
  expect(() => at(readV)).toThrow(OutsideRange)
})
