// property: a wire behind its protector.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { bandHeating } from '../../../src/trade/circuit/protection-heating.ts'

/** Invented wire. */
const wire = { areaMm2: 1.5, resistanceOhmPerM: 0.0133, ampacityA: 20, ratedC: 105, ambientC: 30 }
const behind = (ratingA: number) => bandHeating({ style: 'blade', ratingA, placeC: 25, wire, startC: 60, limitC: 105 })!

it('leaves the wire at its rating where what is never cleared is its continuous current', () => {
  // 1.35 · 14.8148 = 20 A
  expect(behind(20 / 1.35).held.endC).toBeCloseTo(105, 8)
  expect(behind(20 / 1.35).held.currentA).toBeCloseTo(20, 12)
})

it('gets hotter behind a larger fuse', () => {
  fc.assert(
    fc.property(fc.double({ min: 2, max: 40, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }), (ratingA, more) => {
      expect(behind(ratingA * more).worstC).toBeGreaterThanOrEqual(behind(ratingA).worstC - 1e-9)
      expect(behind(ratingA).marginK).toBeCloseTo(105 - behind(ratingA).worstC, 9)
    })
  )
})

it('looks at each gate for as long as it may take', () => {
  expect(behind(10).cleared.map(({ timeS }) => timeS)).toEqual([600, 50, 5])
  expect(behind(10).cleared.map(({ currentA }) => currentA)).toEqual([13.5, 16, 20])
})

it('carries bounds', () => {
  const given = (value: number) => new Given(value)
  const found = boundsOf(
    {
      style: 'blade' as const,
      ratingA: given(10),
      placeC: given(25),
      wire: {
        areaMm2: given(1.5),
        resistanceOhmPerM: given(0.0133),
        ampacityA: new Given(20, { low: 18, high: 22 }),
        ratedC: given(105),
        ambientC: given(30)
      },
      startC: given(60),
      limitC: given(105)
    },
    bandHeating
  )!
  expect(found.worstC.low).toBeLessThan(found.worstC.value)
  expect(found.worstC.high).toBeGreaterThan(found.worstC.value)
})

describe('of a style without gates', () => {
  const unknown = (style: 'thermal' | 'blade-mini', placeC: number, ratingA = 20) =>
    bandHeating({ style, ratingA, placeC, wire, startC: 60, limitC: 105 })
  it('takes the rating for what flows for good, and tells that more may', () => {
    // 20 A is what this wire carries for good.
    expect(unknown('blade-mini', -40)).toMatchObject({ edge: 'unknown', cleared: [], held: { currentA: 20 } })
    expect(unknown('blade-mini', 25).worstC).toBeCloseTo(105, 8)
    expect(behind(10).edge).toBe('published')
  })
  // Factors of the maker's sheet: 0.76 at -30 °C, 0.92 at 0 °C, 1 at 23 °C (thermal-breaker-sheet, read-secondary).
  it.each([
    [-35, 15.2 / 0.76],
    [-20, 15.2 / 0.76],
    [5, 15.2 / 0.92],
    [25, 15.2],
    [50, 15.2]
  ])('a thermal breaker at %s °C holds what it does in the cold', (placeC, currentA) => {
    expect(unknown('thermal', placeC, 15.2).held.currentA).toBeCloseTo(currentA, 9)
  })
})
