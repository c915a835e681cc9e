// Property: cooling grows with its cause; example: air at the part.
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { cooledC, evaporationDropK, venturiDropK } from '../../../src/trade/heat/air-cooling.ts'

const mixture = { latentJPerKg: 350000, airHeatJPerKgK: 1005, fuelHeatJPerKgK: 1700 }

it('a richer mixture cools more, twice the speed four times as much', () => {
  expect(evaporationDropK({ ...mixture, fuelAirRatio: 0.08 })).toBeGreaterThan(evaporationDropK({ ...mixture, fuelAirRatio: 0.06 }))
  const [slow, fast] = [40, 80].map(throatMPerS => venturiDropK({ throatMPerS, airHeatJPerKgK: 1005 }))
  expect(fast! / slow!).toBeCloseTo(4, 12)
})

it('no fuel and no speed: no cooling', () => {
  expect(evaporationDropK({ ...mixture, fuelAirRatio: 0 })).toBe(0)
  expect(venturiDropK({ throatMPerS: 0, airHeatJPerKgK: 1005 })).toBe(0)
})

it('air of 15 °C after 21.25 K and 1.24 K', () => {
  expect(cooledC({ airC: 15, evaporationDropK: 21.25, venturiDropK: 1.24 })).toBeCloseTo(-7.49, 9)
})

it('refuses a throat near the speed of sound', () => {
  expect(() => venturiDropK({ throatMPerS: 301, airHeatJPerKgK: 1005 })).toThrow(OutsideRange)
})
