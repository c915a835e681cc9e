// example: arithmetic by hand.
import { expect, it } from 'vitest'
import { freeAirA } from '../../../src/trade/circuit/ampacity-free-air.ts'

it('goes with the root of the rise', () => {
  // 47 · √(37.5/150) = 23.5
  expect(freeAirA({ anchorA: 47, anchorRiseK: 150, riseK: 37.5 })).toBeCloseTo(23.5, 9)
})
