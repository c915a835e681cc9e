// table: minor diameter tolerances of ASME B1.1 (read-secondary) by hand, in inches: 1B and 2B 0.25·P - 0.40·P²; 3B at least 0.23·P - 1.5·P².
import { expect, it } from 'vitest'
import { unifiedMinorTolerance3BLeastMm, unifiedMinorToleranceMm } from '../../../src/trade/thread/unified-tolerance.ts'

// P = 0.25: 0.0625 - 0.025; P = 0.05: 0.0125 - 0.001.
it.each([
  [0.25, 0.0375],
  [0.05, 0.0115]
])('of 1B and 2B at a pitch of %d in: %d in', (pitchIn, toleranceIn) => {
  expect(unifiedMinorToleranceMm({ pitchMm: 25.4 * pitchIn })).toBeCloseTo(25.4 * toleranceIn, 9)
})

// P = 0.05: 0.0115 - 0.00375; P = 0.0625: 0.014375 - 0.005859375.
it.each([
  [0.05, 0.00775],
  [0.0625, 0.008515625]
])('of 3B at a pitch of %d in: no less than %d in', (pitchIn, toleranceIn) => {
  expect(unifiedMinorTolerance3BLeastMm({ pitchMm: 25.4 * pitchIn })).toBeCloseTo(25.4 * toleranceIn, 9)
})
