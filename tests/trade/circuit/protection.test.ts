// property: bounds run through the whole calculation.
import { expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { type ProtectionGiven, protection } from '../../../src/trade/circuit/protection.ts'

const JOB: ProtectionGiven = {
  style: 'blade',
  ratingA: new Given(10),
  loadA: new Given(7, { low: 6.5, high: 7.5 }),
  ambientC: new Given(25),
  wire: {
    practice: 'boat',
    conductor: { standard: 'awg', awg: 16 },
    insulationC: new Given(105),
    ambientC: new Given(30, { assumed: 'nobody said' }),
    altitudeM: new Given(0),
    bundleCount: new Given(1)
  },
  inrush: { currentA: new Given(20), timeS: new Given(0.1) },
  faultA: new Given(40, { low: 32, high: 50 }),
  breakingA: null
}

it('carries bounds to load, limit and times', () => {
  const found = boundsOf(JOB, protection)
  expect(found.loadPercent).toMatchObject({ value: 70, low: 65, high: 75 })
  expect(found.allowed!.allowedA!.value).toBe(7.5)
  expect(found.limit.wireLimitA!.value).toBe(37.5) // 1.5 · 25
  expect(found.wireMarginA!.value).toBe(27.5)
  expect(found.breakingA!.value).toBe(1000)
  const breakingA = new Given(2000, { low: 1900, high: 2100 })
  expect(boundsOf({ ...JOB, breakingA }, protection).breakingA).toMatchObject({ value: 2000, low: 1900, high: 2100 })
  expect(found.overload!.heldA.value).toBe(13.5)
  // Past the last gate the slow edge keeps 5 s · 2², by hand 20/3.2², 20/4² and 20/5².
  const { longestS } = found.opening!
  expect([longestS.low, longestS.value, longestS.high].map(s => Number(s.toFixed(6)))).toEqual([0.8, 1.25, 1.953125])
  expect(found.inrush!.steps[0]!.shortestS.value).toBeCloseTo(0.15, 9)
})

it('leaves out what was not given or is not published', () => {
  const found = boundsOf({ ...JOB, style: 'thermal', inrush: null, faultA: null } as const, protection)
  expect(found).toMatchObject({ opening: null, inrush: null, overload: null, breakingA: null })
})

it('lets a time run from a number to never inside the bounds of a fault', () => {
  const found = boundsOf({ ...JOB, faultA: new Given(14, { low: 13, high: 15 }) }, protection)
  expect(found.opening!.longestS.high).toBe(Number.POSITIVE_INFINITY)
  expect(Number.isFinite(found.opening!.longestS.value)).toBe(true)
})
