// property: what is drawn agrees with what is judged; figures invented
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { along } from '../../../src/report/drawing/axis.ts'
import { guardedWire } from '../../../src/trade/circuit/guarded-wire.ts'
import { protectorCurves } from '../../../src/work/drawing/protector-curves.ts'
import { wire } from '../../trade/circuit/invented.ts'

const LIES = {
  practice: 'boat',
  conductor: wire('1.5 mm2', 'class-5'),
  insulationC: 105,
  ambientC: 30,
  altitudeM: 0,
  bundleCount: 1,
  protectorC: 25,
  busV: null,
  breakingA: null,
  contacts: null,
  unprotectedMm: null,
  inrush: []
} as const

const drawn = (ratingA: number, faultA: number | null) => protectorCurves({ ...LIES, style: 'blade', ratingA, loadA: 4, faultA }, 'fuse')!

it('the wire stands the short for as long as the rule allows, and no longer', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 40 }), fc.double({ min: 1.7, max: 30, noNaN: true }), (ratingA, times) => {
      const faultA = times * ratingA
      const { wire: stands, band } = drawn(ratingA, faultA)
      const at = <P extends { readonly currentA: number }>(points: readonly P[]) =>
        points.reduce((a, b) => (Math.abs(Math.log(b.currentA / faultA)) < Math.abs(Math.log(a.currentA / faultA)) ? b : a))
      const [stood, opened] = [at(stands), at(band)]
      const judged = guardedWire({ ...LIES, inrush: null, style: 'blade', ratingA, loadA: 4, faultA: stood.currentA })
      const slowS = opened.longestS ?? Number.POSITIVE_INFINITY
      const marginK = judged.short!.marginK
      // At the very edge the two differ by rounding.
      if (Math.abs(marginK) > 0.5) expect((stood.timeS ?? Number.POSITIVE_INFINITY) >= slowS).toBe(marginK > 0)
    }),
    { numRuns: 100 }
  )
})

describe('a fuse of 10 A', () => {
  const { band, wire: stands, marks } = drawn(10, 80)!
  it('never opens sooner at less current, and the wire never stands more current for longer', () => {
    const slow = band.map(({ longestS }) => longestS ?? Number.POSITIVE_INFINITY)
    const long = stands.map(({ timeS }) => timeS ?? Number.POSITIVE_INFINITY)
    for (const times of [slow, long])
      for (let i = 1; i < times.length; i++) expect(times[i]!).toBeLessThanOrEqual(times[i - 1]! * (1 + 1e-12))
  })
  it('marks load and short', () => {
    expect(marks.map(({ name }) => name)).toEqual(['load 4 A', 'short at the far end 80 A'])
  })
  it('reaches beyond both', () => {
    const axis = { by: 'log' as const, least: band[0]!.currentA, most: band.at(-1)!.currentA }
    for (const { currentA } of marks) expect(along(axis, currentA)).toBeGreaterThan(0)
    expect(along(axis, 80)).toBeLessThan(1)
  })
})

it('a style without published times has none to draw', () => {
  expect(protectorCurves({ ...LIES, style: 'thermal', ratingA: 10, loadA: 4, faultA: null }, 'breaker')).toBeUndefined()
})

describe('a fuse whose load is switched off', () => {
  const off = (faultA: number | null) =>
    protectorCurves({ ...LIES, style: 'blade', ratingA: 10, loadA: 0, inrush: [{ currentA: 0, lastsS: 1 }], faultA }, 'fuse')!
  it('is drawn without a load and without its switch-on', () => {
    expect(off(80).marks.map(({ name }) => name.split(' ')[0])).toEqual(['short'])
    expect(off(80).band.every(({ currentA }) => currentA > 0)).toBe(true)
  })
  it('is said in whole words where nothing else is marked', () => {
    expect(off(null).says).toMatch(/how long its wire stands each current$/)
  })
})
