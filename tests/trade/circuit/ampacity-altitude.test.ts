// example: each side of the points that are known.
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { altitudeFactor, factorAtAltitude } from '../../../src/trade/circuit/ampacity-altitude.ts'

it.each([
  [-100, 1],
  [0, 1],
  [3048, 0.955],
  [6096, 0.91],
  [6097, 0.79],
  [18_288, 0.79]
])('is at %d m %d', (altitudeM, factor) => {
  expect(factorAtAltitude(altitudeM)).toBeCloseTo(factor, 12)
})

it('draws no line above 20 000 ft and knows nothing above 60 000 ft', () => {
  expect(() => altitudeFactor({ altitudeM: 6097 })).toThrow(OutsideRange)
  expect(() => factorAtAltitude(18_289)).toThrow(OutsideRange)
})
