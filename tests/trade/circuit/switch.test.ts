// example: arithmetic by hand from FAA AC 43.13-1B table 11-4 (read-secondary).
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { switchNeed } from '../../../src/trade/circuit/switch.ts'

const HEATER = { currentA: 5, load: 'resistive', coldRatio: null, rating: null } as const

it.each([
  [12, '12 V DC', 5],
  [14.2, '12 V DC', 5],
  [24, '28 V DC', 10],
  [27.6, '28 V DC', 10]
])('reads %d V at the row of %s', (busV, row, neededA) => {
  expect(switchNeed({ ...HEATER, busV })).toMatchObject({ row, neededA, marginA: null })
})

it('says at which row it read', () => {
  expect(switchNeed({ ...HEATER, busV: 14 }).says).toEqual(['14 V read at the 12 V DC row'])
})

it('asks for the current a cold PTC heater makes where that is more', () => {
  expect(switchNeed({ ...HEATER, busV: 14, coldRatio: 3 })).toMatchObject({ makeA: 15, neededA: 15 })
  expect(switchNeed({ ...HEATER, busV: 28, coldRatio: 1.5 })).toMatchObject({ makeA: 7.5, neededA: 10 })
})

it('judges by a DC rating alone', () => {
  expect(switchNeed({ ...HEATER, busV: 28, rating: { supply: 'dc', ratingA: 16 } }).marginA).toBe(6)
  const ac = switchNeed({ ...HEATER, busV: 28, rating: { supply: 'ac', ratingA: 16 } })
  expect(ac.marginA).toBeNull()
  expect(ac.says.join()).toContain('AC rating')
  expect(switchNeed({ ...HEATER, busV: 28, rating: { supply: 'not said', ratingA: 16 } }).marginA).toBeNull()
})

it('warns of silver contacts on a low voltage', () => {
  expect(switchNeed({ ...HEATER, busV: 7.9 }).says).toHaveLength(2)
  expect(switchNeed({ ...HEATER, busV: 8 }).says).toHaveLength(1)
})

it('refuses no voltage at all', () => {
  expect(() => switchNeed({ ...HEATER, busV: 0 })).toThrow(OutsideRange)
})

it('asks above its table for no less than at the last row, and says that none is printed', () => {
  expect(switchNeed({ ...HEATER, busV: 32 }).says).toEqual(['32 V read at the 28 V DC row'])
  expect(switchNeed({ ...HEATER, busV: 32.1 })).toMatchObject({ neededA: 10, says: [expect.stringContaining('no factor')] })
})
