// property: what heat flow demands of a warmed wire; table: aircraft wire by hand.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ampacity } from '../../../src/trade/circuit/ampacity.ts'
import type { Conductor } from '../../../src/trade/circuit/ampacity-conductor.ts'
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

  it('is at the rating of its insulation with all that a hot place leaves it', () => {
    fc.assert(
      fc.property(lying, fc.double({ min: 50, max: 58, noNaN: true }), (x, ambientC) => {
        const insulationC = ambientC + (x.insulationC % 30) + 2
        const hot = { ...x, ambientC, insulationC: Math.max(60, insulationC) }
        expect(warmed(hot, 1)).toBeCloseTo(hot.insulationC, 6)
      })
    )
  })

  // By hand: AWG 18 of the aircraft table has 6 A at a rise of 35 K, whatever the insulation: 50 + 35·(5/6)² = 74.31.
  it.each([75, 90, 105])('warms by the rise of the table, %i °C insulation', insulationC => {
    const x = { practice: 'aircraft', conductor: awg(18), insulationC, ambientC: 50, altitudeM: 0, bundleCount: 10 } as const
    const current = ampacity(x)
    expect(loadedWireC({ current, currentA: 5, insulationC, ambientC: 50 })).toBeCloseTo(74.31, 2)
  })

  it('is 9.25 K above 50 °C with 96.2 % of what 10 K leave it', () => {
    // By hand: 50 + 10·0.962² = 59.254.
    const x = { practice: 'aircraft', conductor: awg(16), insulationC: 60, ambientC: 50, altitudeM: 0, bundleCount: 30 } as const
    expect(warmed(x, 0.962)).toBeCloseTo(59.254, 3)
  })
})
