// property: a number in a sentence stays on the side on which the sentence is true
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { threeDigits } from '../../../src/trade/circuit/three-digits.ts'

const number = fc.double({ min: 1e-6, max: 1e6, noNaN: true })

it('up is never less, down never more, and neither is off by more than one of three digits', () => {
  fc.assert(
    fc.property(number, x => {
      expect(Number(threeDigits(x, 'up')) / x).toBeGreaterThanOrEqual(1 - 1e-12)
      expect(Number(threeDigits(x, 'up')) / x).toBeLessThanOrEqual(1.011)
      expect(Number(threeDigits(x, 'down')) / x).toBeLessThanOrEqual(1 + 1e-12)
      expect(Number(threeDigits(x, 'down')) / x).toBeGreaterThanOrEqual(0.989)
    })
  )
})

it.each([
  [12.649, 'near', '12.6'],
  [12.649, 'up', '12.7'],
  [12.649, 'down', '12.6'],
  [0.45, 'down', '0.45'],
  [72, 'down', '72'],
  [0, 'up', '0']
] as const)('%d to the side %s is %s', (x, side, text) => {
  expect(threeDigits(x, side)).toBe(text)
})
