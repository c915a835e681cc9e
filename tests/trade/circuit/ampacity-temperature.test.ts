// property: the two laws and how they lie to each other.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { cautiousConductorC, loadRatio, squareLawC } from '../../../src/trade/circuit/ampacity-temperature.ts'

const wire = { ambientC: 20, ratedC: 105 }

it('is hotter by the cautious law than by the square, and the same at both ends', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), loadRatio => {
      expect(cautiousConductorC({ ...wire, loadRatio })).toBeGreaterThan(squareLawC({ ...wire, loadRatio }))
    })
  )
  for (const law of [cautiousConductorC, squareLawC]) {
    expect(law({ ...wire, loadRatio: 0 })).toBe(20)
    expect(law({ ...wire, loadRatio: 1 })).toBe(105)
    expect(() => law({ ...wire, loadRatio: 1.001 })).toThrow(OutsideRange)
  }
})

it('follows each law at a quarter of the current', () => {
  // By hand: 20 + 85 · √0.25 = 62.5, and 20 + 85 · 0.25² = 25.3125.
  const at = { ...wire, loadRatio: loadRatio({ currentA: 2.5, ampacityA: 10 }) }
  expect(cautiousConductorC(at)).toBeCloseTo(62.5, 9)
  expect(squareLawC(at)).toBeCloseTo(25.3125, 9)
})
