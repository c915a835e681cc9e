// example: how far a reading goes with what is uncertain, by hand from the divider that stands behind it
import { expect, it } from 'vitest'
import { HEALTHY } from '../../../src/trade/proof/fault.ts'
import { predictorOf } from '../../../src/trade/proof/predictor.ts'
import { TWO_POINTS, twoHeaters } from './invented.ts'

// The bus sees what the 0.01 ohm inside leave of the source: 0.04 + 1/(1/4.02 + 1/6.02) + 0.03 = 2.4803 ohm of 2.4903.
const SHARE = 2.4803 / 2.4903
const predictor = predictorOf(twoHeaters(), TWO_POINTS)

it('a source of 11 to 13 V is expected in the middle', () => {
  expect(predictor.valuesOf(HEALTHY, 0)[0]).toBeCloseTo(12 * SHARE, 3)
})

// That is 12 ± 1 V: one deviation of an even spread is 1/√3 V.
it('a deviation of the source moves the bus by as much', () => {
  const steepest = Math.max(...predictor.slopesOf(HEALTHY, 0).map(([bus = 0]) => Math.abs(bus)))
  expect(steepest).toBeCloseTo((1 / Math.sqrt(3)) * SHARE, 4)
})
