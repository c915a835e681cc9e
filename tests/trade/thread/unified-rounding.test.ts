// property: rounding in inches
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { countMm, countText, tenThousandths, toThousandths } from '../../../src/trade/thread/unified-rounding.ts'

it('a whole count comes back from its millimetres', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), count => {
      expect(tenThousandths(countMm(count))).toBe(count)
    })
  )
})

it('is never off by more than half a ten-thousandth, half a millionth aside', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), lengthMm => {
      expect(Math.abs(countMm(tenThousandths(lengthMm)) - lengthMm)).toBeLessThanOrEqual((0.00005 + 0.0000005) * 25.4 + 1e-9)
    })
  )
})

// Half up, by hand: 0.00165 in, and 0.0016496 in which is 0.001650 at six decimals.
it.each([
  [0.00165, 17],
  [0.0016496, 17],
  [0.0016494, 16],
  [0.00005, 1]
])('%d in is %d ten-thousandths', (inches, count) => {
  expect(tenThousandths(inches * 25.4)).toBe(count)
})

it.each([
  [1959, 1960],
  [1955, 1960],
  [1954, 1950]
])('%d is %d in whole thousandths', (from, to) => {
  expect(toThousandths(from)).toBe(to)
})

it('is printed to four decimals', () => {
  expect(countText(3479)).toBe('0.3479 in')
})
