// table: accuracy of a reading and digits of the display, by hand
import { expect, it } from 'vitest'
import { meterErrorV } from '../../../src/trade/proof/meter-error.ts'

it('0.5 % of 12 V and 2 digits of 0.01 V are 0.06 and 0.02 V', () => {
  expect(meterErrorV({ shownV: 12, accuracyPercent: 0.5, digitsCount: 2, resolutionV: 0.01 })).toBeCloseTo(0.08, 12)
})
