// property: what a voltage tells of the charge; table: ends and middles of a battery maker's table.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { BATTERY_STATES, chargeBand } from '../../../src/trade/supply/battery-state.ts'

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

// 11.89, 12.24 and 12.65 V are 0, 50 and 100 % (a battery maker's table, read). The charge follows the density of the acid,
// and the voltage the density, 1 V for 1 g/cm³ in each cell (memory): halfway between two voltages lies half the charge.
// Told are 15 % either way, within 0 and 100 %.
it.each([
  ['empty', 11.89, 0, 15],
  ['a quarter', (11.89 + 12.24) / 2, 10, 40],
  ['half', 12.24, 35, 65],
  ['three quarters', (12.24 + 12.65) / 2, 60, 90],
  ['full', 12.65, 85, 100]
])('%s: %d V', (_, readV, lowPercent, highPercent) => {
  const band = at(readV)
  // The table's own quarters stand 0.005 V off the middle: 0.75 %.
  expect(Math.abs(band.lowPercent - lowPercent)).toBeLessThanOrEqual(0.75)
  expect(Math.abs(band.highPercent - highPercent)).toBeLessThanOrEqual(0.75)
})

it('has nothing to tell but empty below the table, nor but full above', () => {
  expect(at(11)).toMatchObject({ lowPercent: 0, highPercent: 15 })
  expect(at(13)).toMatchObject({ lowPercent: 85, highPercent: 100 })
})

it('goes by equal steps of charge', () => {
  expect(BATTERY_STATES.map(({ chargePercent }) => chargePercent)).toEqual([0, 25, 50, 75, 100])
})

it('finds a cold battery emptier than its reading', () => {
  expect(at(12.5, -1.1).highPercent).toBeLessThan(at(12.5).highPercent)
})

it.each([9.99, 13.51])('refuses %d V: no battery at rest', readV => {
  expect(() => at(readV)).toThrow(OutsideRange)
})

it.each([10, 13.5])('takes %d V', readV => {
  expect(() => at(readV)).not.toThrow()
})
