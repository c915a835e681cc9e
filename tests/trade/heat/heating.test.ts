// Example: small steps of a warm-up by hand.
import { expect, it } from 'vitest'
import { compactSizeMm, gapK, targetC, timeToTargetS } from '../../../src/trade/heat/heating.ts'

it('34 °C less -6 °C is 40 K to go', () => {
  expect(gapK({ steadyC: 34, blockC: -6 })).toBeCloseTo(40, 12)
})

it('3 K above a dew point of 0.5 °C', () => {
  expect(targetC({ pointC: 0.5, aboveK: 3 })).toBeCloseTo(3.5, 12)
})

it('half the way takes ln 2 time constants', () => {
  expect(timeToTargetS({ timeConstantS: 675, startGapK: 40, targetGapK: 20 })).toBeCloseTo(675 * Math.LN2, 9)
})

it('a cylinder 60 mm thick and as long: π·60² around and two ends of π·60²/4 mm²', () => {
  expect(compactSizeMm({ areaM2: (Math.PI * 60 ** 2 + 2 * (Math.PI / 4) * 60 ** 2) / 1e6 })).toBeCloseTo(60, 9)
})
