// Table: factors of strength ratio and dilation, Alexander and VDI 2230 coefficients (memory). Tolerance as the rows state it: 0.0005.
import { describe, expect, test } from 'vitest'
import { bendingFactors, dilation } from '../../src/trade/joint/strength-ratio.ts'

describe('bending factors', () => {
  test.each([
    [0.6, 1.0268],
    [0.8, 0.9533]
  ])('C3 at strength ratio %f', (strengthRatio, factor) => {
    const { castingBendingFactor, screwBendingFactor } = bendingFactors({ strengthRatio })
    expect(Math.abs(castingBendingFactor - factor)).toBeLessThanOrEqual(0.0005)
    expect(screwBendingFactor).toBe(0.897)
  })
  test.each([
    [1, 0.897],
    [1.2, 0.9626],
    [2, 1.1668]
  ])('C2 at strength ratio %f', (strengthRatio, factor) => {
    const { castingBendingFactor, screwBendingFactor } = bendingFactors({ strengthRatio })
    expect(Math.abs(screwBendingFactor - factor)).toBeLessThanOrEqual(0.0005)
    expect(castingBendingFactor).toBe(0.897)
  })
})

test('C1 at 1.5 diameters of metal', () => {
  expect(Math.abs(dilation({ bossMm: 15, majorMm: 10 }) - 0.84)).toBeLessThanOrEqual(0.0005)
})
