// Property: of all loadings the two that are tried bring the centre furthest (invented machine); an example by hand.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { extremes } from '../../../src/trade/mass/extremes.ts'

const limits = { forwardM: 0.85, rearwardM: 1.05 }
const empty = { massKg: 300, armM: 0.95 }
// Whole millimetres and kilograms: of the numbers down to nought most are so small that they count for nothing.
const load = fc
  .record({ leastKg: fc.nat(20), moreKg: fc.nat(90), armMm: fc.integer({ min: -500, max: 2500 }) })
  .map(({ leastKg, moreKg, armMm }) => ({ leastKg, greatestKg: leastKg + moreKg, armM: armMm / 1000 }))

function centreM(items: readonly { massKg: number; armM: number }[]): number {
  const massKg = items.reduce((sum, one) => sum + one.massKg, 0)
  return items.reduce((sum, one) => sum + one.massKg * one.armM, 0) / massKg
}

describe('of all loadings, by brute force', () => {
  it('none brings the centre further forward or to the rear', () => {
    fc.assert(
      fc.property(fc.array(load, { maxLength: 5 }), loads => {
        const { forward, rearward } = extremes({ empty, loads, limits })
        const all = Array.from({ length: 2 ** loads.length }, (_, bits) =>
          centreM([empty, ...loads.map(({ leastKg, greatestKg, armM }, i) => ({ massKg: bits & (1 << i) ? greatestKg : leastKg, armM }))])
        )
        expect(forward.centreM).toBeCloseTo(Math.min(...all), 9)
        expect(rearward.centreM).toBeCloseTo(Math.max(...all), 9)
        expect(forward.marginM).toBeCloseTo(forward.centreM - limits.forwardM, 12)
        expect(rearward.marginM).toBeCloseTo(limits.rearwardM - rearward.centreM, 12)
      })
    )
  })
})

// 300 kg at 0.95 m, 60 kg at 1.00 m and 20 kg at 1.55 m: (285 + 60 + 31)/380 m; 5 kg of what stands before the centre are on board as well.
it('a load short of the limit draws the centre as well', () => {
  const loads = [
    { leastKg: 0, greatestKg: 60, armM: 1 },
    { leastKg: 5, greatestKg: 80, armM: 0.5 },
    { leastKg: 0, greatestKg: 20, armM: 1.55 }
  ]
  const { rearward } = extremes({ empty, loads, limits })
  expect(rearward.massKg).toBe(385)
  expect(rearward.centreM).toBeCloseTo((285 + 60 + 31 + 2.5) / 385, 12)
})

it('an empty machine is its own extreme', () => {
  const { forward, rearward } = extremes({ empty, loads: [], limits })
  expect(forward.centreM).toBeCloseTo(0.95, 12)
  expect(forward.marginM).toBeCloseTo(0.1, 12)
  expect(rearward.marginM).toBeCloseTo(0.1, 12)
})
