// Property: no loading breaks a limit by more than the two that are tried (invented machine).
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { extremes } from '../../../src/trade/mass/extremes.ts'

const limits = { forwardM: 0.85, rearwardM: 1.05 }
const empty = { massKg: 300, armM: 0.95 }
// Whole millimetres and kilograms: of the numbers down to nought most are so small that they count for nothing.
const load = fc
  .record({ leastKg: fc.nat(20), moreKg: fc.nat(90), armMm: fc.integer({ min: -500, max: 2500 }) })
  .map(({ leastKg, moreKg, armMm }) => ({ leastKg, greatestKg: leastKg + moreKg, armM: armMm / 1000 }))

/** Moment about a limit: its sign says on which side the centre lies. */
function about(limitM: number, items: readonly { massKg: number; armM: number }[]): number {
  return items.reduce((sum, { massKg, armM }) => sum + massKg * (armM - limitM), 0)
}

describe('of all loadings, by brute force', () => {
  it('none lies beyond a limit that the tried ones keep', () => {
    fc.assert(
      fc.property(fc.array(load, { maxLength: 5 }), loads => {
        const { forward, rearward } = extremes({ empty, loads, limits })
        const all = Array.from({ length: 2 ** loads.length }, (_, bits) => [
          empty,
          ...loads.map(({ leastKg, greatestKg, armM }, i) => ({ massKg: bits & (1 << i) ? greatestKg : leastKg, armM }))
        ])
        const furthestForward = Math.min(...all.map(items => about(limits.forwardM, items)))
        const furthestBack = Math.max(...all.map(items => about(limits.rearwardM, items)))
        expect(forward.marginM * forward.massKg).toBeCloseTo(furthestForward, 6)
        expect(rearward.marginM * rearward.massKg).toBeCloseTo(-furthestBack, 6)
      })
    )
  })
})

it('an empty machine is its own extreme', () => {
  const { forward, rearward } = extremes({ empty, loads: [], limits })
  expect(forward.centreM).toBeCloseTo(0.95, 12)
  expect(forward.marginM).toBeCloseTo(0.1, 12)
  expect(rearward.marginM).toBeCloseTo(0.1, 12)
})

it('a load that stands at a limit is beyond neither', () => {
  for (const armM of [limits.forwardM, limits.rearwardM]) {
    const { forward, rearward } = extremes({ empty, loads: [{ leastKg: 10, greatestKg: 70, armM }], limits })
    expect([forward.massKg, rearward.massKg]).toEqual([310, 310])
  }
})
