// example: an invented curve.
import { expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { outputAtA } from '../../../src/trade/supply/generator.ts'

const CURVE = [
  { speedRpm: 3600, outputA: 16 },
  { speedRpm: 1200, outputA: 4 },
  { speedRpm: 2400, outputA: 13 }
]

it.each([
  [1200, 4],
  [1800, 8.5],
  [2400, 13],
  [3000, 14.5],
  [3600, 16]
])('gives at %d rpm %d A, in whatever order the points came', (speedRpm, outputA) => {
  expect(outputAtA(CURVE, speedRpm)).toBeCloseTo(outputA, 12)
})

it.each([1199, 3601])('does not go on past the ends: %d rpm', speedRpm => {
  expect(() => outputAtA(CURVE, speedRpm)).toThrow(OutsideRange)
})

it('wants two speeds', () => {
  expect(() => outputAtA(CURVE.slice(0, 1), 3600)).toThrow(NoAnswer)
  expect(() => outputAtA([], 3600)).toThrow(NoAnswer)
})

it('takes either of two outputs that were measured at one speed, and no third', () => {
  const points = [...CURVE, { speedRpm: 1200, outputA: 6 }]
  expect([4, 6]).toContain(outputAtA(points, 1200))
  // Halfway from 2400 to 3600 rpm both are forgotten.
  expect(outputAtA(points, 3000)).toBeCloseTo(14.5, 12)
  expect(() => outputAtA(points.slice(-1).concat(points[1]!), 1200)).toThrow(NoAnswer)
})
