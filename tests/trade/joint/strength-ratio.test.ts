// Property: the factors of strength ratio hang together.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import * as ratio from '../../../src/trade/joint/strength-ratio.ts'

test('30 kN in the casting against 40 kN in the part is a ratio of 0.75', () => {
  expect(ratio.strengthRatio({ internalStripLoadN: 30000, externalStripLoadN: 40000 })).toBe(0.75)
})

test('the stronger thread keeps 0.897, the weaker 0.85 to 1.2', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.4, max: 2.2, noNaN: true }), strengthRatio => {
      const { screwBendingFactor, castingBendingFactor } = ratio.bendingFactors({ strengthRatio })
      const [weaker, stronger] = strengthRatio < 1 ? [castingBendingFactor, screwBendingFactor] : [screwBendingFactor, castingBendingFactor]
      expect(stronger).toBe(0.897)
      expect(weaker).toBeGreaterThan(0.85)
      expect(weaker).toBeLessThan(1.2)
    })
  )
})

// The curve of the weaker thread begins where the other becomes the stronger, at equal strength; it is not 0.897 there but for a moment.
test('the least difference in strength has the curve of the weaker', () => {
  expect(ratio.bendingFactors({ strengthRatio: 1.005 }).screwBendingFactor).toBe(ratio.screwBendingFactor({ strengthRatio: 1.005 }))
  expect(ratio.bendingFactors({ strengthRatio: 0.995 }).castingBendingFactor).toBe(ratio.castingBendingFactor({ strengthRatio: 0.995 }))
})

test('each curve meets the constant where it begins, within its rounding', () => {
  expect(Math.abs(ratio.screwBendingFactor({ strengthRatio: 1 }) - 0.897)).toBeLessThan(0.0005)
  expect(Math.abs(ratio.castingBendingFactor({ strengthRatio: 1 }) - 0.897)).toBeLessThan(0.0005)
  expect(Math.abs(ratio.dilationFactor({ bossMm: 19, majorMm: 10 }) - 1)).toBeLessThan(0.0005)
})
