// example: arithmetic by hand.
import { expect, it } from 'vitest'
import { freeAirA, freeAirOf } from '../../../src/trade/circuit/ampacity-free-air.ts'

it('goes with the root of the rise', () => {
  // 47 · √(37.5/150) = 23.5
  expect(freeAirA({ anchorA: 47, anchorRiseK: 150, riseK: 37.5 })).toBeCloseTo(23.5, 9)
})

it('knows three sizes', () => {
  // 21.5 · √(35/140) = 10.75
  expect(freeAirOf(20, { insulationC: 105, ambientC: 70 })).toBeCloseTo(10.75, 9)
  expect(freeAirOf(18, { insulationC: 105, ambientC: 70 })).toBeNull()
})
