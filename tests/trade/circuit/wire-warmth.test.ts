// property: what heat flow demands of a warmed wire; table: aircraft wire by hand.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ampacity } from '../../../src/trade/circuit/ampacity.ts'
import { type Conductor, sectionMm2 } from '../../../src/trade/circuit/ampacity-conductor.ts'
import { loadedWireC } from '../../../src/trade/circuit/wire-warmth.ts'
import type { PracticeName } from '../../../src/trade/practice-names.ts'

const awg = (awg: number): Conductor => ({ standard: 'awg', awg })
const PRACTICES: readonly PracticeName[] = ['general', 'road', 'boat', 'aircraft']

/** At a share of what the wire carries for good. */
function warmed(x: Parameters<typeof ampacity>[0], share: number): number {
  const current = ampacity(x)
  if (current.kind === 'no figure') throw new Error(current.says)
  return loadedWireC({ current, currentA: share * current.ampacityA, insulationC: x.insulationC, ambientC: x.ambientC })
}

const lying = fc.record({
  practice: fc.constantFrom(...PRACTICES),
  conductor: fc.constantFrom(...[18, 16, 12, 8, 2].map(awg)),
  insulationC: fc.double({ min: 60, max: 200, noNaN: true }),
  ambientC: fc.double({ min: -40, max: 58, noNaN: true }),
  altitudeM: fc.double({ min: 0, max: 6000, noNaN: true }),
  bundleCount: fc.integer({ min: 1, max: 9 })
})

describe('a wire with its current', () => {
  it('is never colder than its surroundings nor hotter than its insulation, and warmer with more current', () => {
    fc.assert(
      fc.property(lying, fc.double({ min: 0, max: 0.98, noNaN: true }), (x, share) => {
        const atC = warmed(x, share)
        expect(atC).toBeGreaterThanOrEqual(x.ambientC)
        expect(atC).toBeLessThanOrEqual(x.insulationC + 1e-9)
        expect(warmed(x, share + 0.02)).toBeGreaterThan(atC)
      })
    )
  })

  it('is at the rating of its insulation with all that a hot place leaves it, in an aircraft at most', () => {
    fc.assert(
      fc.property(lying, fc.double({ min: 50, max: 58, noNaN: true }), (x, ambientC) => {
        const insulationC = ambientC + (x.insulationC % 30) + 2
        const hot = { ...x, ambientC, insulationC: Math.max(60, insulationC) }
        const atC = warmed(hot, 1)
        expect(atC).toBeLessThanOrEqual(hot.insulationC + 1e-6)
        if (x.practice !== 'aircraft') expect(atC).toBeGreaterThanOrEqual(hot.insulationC - 1e-6)
      })
    )
  })

  // By hand, from 33 CFR 183.425 table 5, one wire at 30 °C: AWG 18 has 10 A at 75 °C insulation, 20 A at 90 and at 105.
  // 30 + 45·(5/10)² = 41.25; 30 + 60·(5/20)² = 33.75; 30 + 75·(5/20)² = 34.69.
  it.each([
    [75, 41.25],
    [90, 33.75],
    [105, 34.69]
  ])('by itself in an aircraft warms as one wire in open air, %i °C insulation', (insulationC, byHandC) => {
    const x = { practice: 'aircraft', conductor: awg(18), insulationC, ambientC: 30, altitudeM: 0, bundleCount: 1 } as const
    expect(loadedWireC({ current: ampacity(x), currentA: 5, insulationC, ambientC: 30 })).toBeCloseTo(byHandC, 2)
  })

  it('warms by the rise of the aircraft table where it lies as that says', () => {
    // By hand: 6 A have 35 K there; 70 + 35·(5/6)² = 94.31. The boat table would have it cooler at no point: 20 · 0.4 · 0.79 = 6.32 A have 75 K.
    const x = { practice: 'aircraft', conductor: awg(18), insulationC: 105, ambientC: 70, altitudeM: 18_288, bundleCount: 33 } as const
    expect(loadedWireC({ current: ampacity(x), currentA: 5, insulationC: 105, ambientC: 70 })).toBeCloseTo(94.31, 2)
    // Insulation for 75 °C leaves 5 K: 6 · √(5/35) = 2.268 A; 70 + 5·(2/2.268)² = 73.89.
    const cool = { ...x, insulationC: 75 }
    expect(loadedWireC({ current: ampacity(cool), currentA: 2, insulationC: 75, ambientC: 70 })).toBeCloseTo(73.89, 2)
  })

  it('warms as with the coolest insulation of the boat table where its own is below that', () => {
    // By hand: AWG 18 has 10 A at 60 °C insulation, in an engine space of 50 °C 0.58 of that (33 CFR 183.425): 50 + 10·(2/5.8)² = 51.19.
    for (const insulationC of [55, 60]) {
      const x = { practice: 'aircraft', conductor: awg(18), insulationC, ambientC: 50, altitudeM: 0, bundleCount: 1 } as const
      expect(loadedWireC({ current: ampacity(x), currentA: 2, insulationC, ambientC: 50 })).toBeCloseTo(51.19, 2)
    }
  })
})

const SIZES: readonly Conductor[] = [
  ...[24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3].map(awg),
  ...[0.22, 0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95].map((areaMm2): Conductor => ({ standard: 'mm2', areaMm2 }))
].toSorted((a, b) => sectionMm2(a) - sectionMm2(b))

it('is never warmer for being thicker, whatever the practice and however it lies', () => {
  fc.assert(
    fc.property(lying, fc.double({ min: 0.1, max: 30, noNaN: true }), (x, currentA) => {
      const warmth = SIZES.flatMap(conductor => {
        const current = ampacity({ ...x, conductor })
        return current.kind === 'no figure' ? [] : [loadedWireC({ ...x, current, currentA })]
      })
      expect(warmth.length).toBeGreaterThan(10)
      warmth.slice(1).forEach((atC, i) => {
        expect(atC).toBeLessThanOrEqual(warmth[i]! + 1e-9)
      })
    })
  )
})

it('is as warm in one practice as in another where it lies by itself in a cool place', () => {
  const lies = { insulationC: 105, ambientC: 20, altitudeM: 0, bundleCount: 1 }
  for (const conductor of SIZES) {
    const [general, aircraft] = (['general', 'aircraft'] as const).map(practice => {
      const current = ampacity({ practice, conductor, ...lies })
      return loadedWireC({ current, currentA: 4, ...lies })
    })
    expect(aircraft).toBeCloseTo(general!, 9)
  }
})
