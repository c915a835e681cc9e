// property: the stop keeps clear of every old bottom, whatever the bounds, and gives nothing away
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import * as clearance from '../../../src/trade/hole/clearance.ts'
import { type OldHole, oldHole } from '../../../src/trade/hole/old-hole.ts'
import { type Opening, stopSetting, stops } from '../../../src/trade/hole/stop.ts'
import { about, atCorners, elbow } from './invented.ts'
import { inside, openings } from './openings.ts'
import { sampledGapMm, sampledTipMm } from './sampled.ts'

/** Least gap by the closed form. */
function gapMm(found: Plain<OldHole>, tipDepthMm: number): number {
  const { oldTipMm, rimGainMm } = oldHole(found)
  const at = { oldTipMm, tipDepthMm, stopErrorMm: 0 }
  return Math.min(clearance.pointGapMm(at), clearance.rimGapMm({ ...at, rimGainMm }))
}

/** Gap at the stop over sampled radii, less what is to be kept clear. */
const spareMm = (x: Plain<Opening>, tipMm: number) => sampledGapMm(x, tipMm + x.stopErrorMm) - x.keepClearMm

describe('the stop', () => {
  it('the closed form agrees with 2000 sampled radii', () => {
    fc.assert(
      fc.property(openings, opening => {
        const found = plainOf(opening).plain
        // The rod may by its bounds be wider than the hole, where the sampler has no bottom: the nominal fits.
        fc.pre(found.rodMm <= found.foundDiameterMm)
        // At the wall the root of the sampler turns a rounding of 1e-15 into 1e-7.
        expect(oldHole(found).oldTipMm).toBeCloseTo(sampledTipMm(found), 6)
        expect(gapMm(found, 30)).toBeCloseTo(sampledGapMm(found, 30), 6)
      }),
      { numRuns: 300 }
    )
  })

  it('keeps clear at every corner of the bounds, and just so at the worst end that it names', () => {
    fc.assert(
      fc.property(openings, opening => {
        const { tipDepthMm, worstAt } = stopSetting(opening)
        const lesser = ({ pointStopMm, rimStopMm }: ReturnType<typeof stops>) => Math.min(pointStopMm, rimStopMm)
        expect(tipDepthMm.value).toBeLessThanOrEqual(Math.min(...atCorners(opening, stops).map(lesser)) + 1e-9)
        expect(lesser(stops(plainOf(opening, worstAt).plain))).toBeCloseTo(tipDepthMm.value, 9)
      }),
      { numRuns: 200 }
    )
  })

  it('keeps clear at every radius anywhere inside the bounds', () => {
    fc.assert(
      fc.property(openings, inside, (opening, shares) => {
        const { tipDepthMm } = stopSetting(opening)
        const { slots } = plainOf(opening)
        const values = slots.map(({ given: { low, high } }, i) => low + (high - low) * shares[i]!)
        const { plain } = plainOf(opening, values)
        fc.pre(plain.rodMm <= plain.foundDiameterMm)
        fc.pre(plain.bottom.shape !== 'radius' || plain.bottom.filletMm <= plain.foundDiameterMm / 2)
        expect(spareMm(plain, tipDepthMm.value)).toBeGreaterThan(-1e-6)
      }),
      { numRuns: 300 }
    )
  })

  it('is never lowered by a hole found deeper, nor raised by a wider error, nor by more to keep clear', () => {
    const more = fc.double({ min: 0.001, max: 3, noNaN: true })
    fc.assert(
      fc.property(openings, more, (opening, byMm) => {
        const { foundDepthMm: found, keepClearMm: keep, stopErrorMm: error } = opening
        const moved = (given: Given) => new Given(given.value + byMm, { low: given.low + byMm, high: given.high + byMm })
        const tipMm = (changed: Partial<Opening>) => stopSetting({ ...opening, ...changed }).tipDepthMm.value
        const as = tipMm({})
        expect(tipMm({ foundDepthMm: moved(found) })).toBeCloseTo(as + byMm, 9)
        expect(tipMm({ keepClearMm: moved(keep) })).toBeLessThan(as)
        expect(tipMm({ foundDepthMm: new Given(found.value, { low: found.low - byMm, high: found.high }) })).toBeLessThan(as)
        expect(tipMm({ stopErrorMm: new Given(0, { low: error.low - byMm, high: error.high + byMm }) })).toBeLessThan(as)
      }),
      { numRuns: 100 }
    )
  })
})

/** The least stop over many widths of the old hole, the other inputs at their ends. */
function leastStopMm(opening: Opening, [narrowMm, wideMm]: [number, number]): number {
  const widths = Array.from({ length: 201 }, (_, i) => narrowMm + ((wideMm - narrowMm) * i) / 200)
  const at = (widthMm: number) => atCorners({ ...opening, foundDiameterMm: about(widthMm) }, x => Math.min(...Object.values(stops(x))))
  return Math.min(...widths.flatMap(at))
}

// A rod on the fillet and a drill that may be wider or narrower than the hole: from the nominal, single moves point away from the worst corner.
it('finds a worst end that single moves do not show', () => {
  const opening: Opening = {
    ...elbow().opening,
    foundDiameterMm: about(19.83, 0.18),
    foundDepthMm: about(60),
    rodMm: about(18.56, 0.02),
    bottom: { shape: 'radius', filletMm: about(6.32, 0.07) },
    drillMm: about(19.99, 0.07),
    pointDeg: about(115.8, 1.7)
  }
  const leastMm = leastStopMm(opening, [19.65, 20.01])
  const { value } = stopSetting(opening).tipDepthMm
  expect(value).toBeLessThanOrEqual(leastMm + 1e-9)
  expect(value).toBeGreaterThan(leastMm - 1e-3)
})

it('does not reckon with a fillet hole narrower than the rod that went in', () => {
  const opening: Opening = {
    ...elbow().opening,
    foundDiameterMm: new Given(9, { low: 8, high: 9.01 }),
    foundDepthMm: about(24),
    rodMm: about(9),
    bottom: { shape: 'radius', filletMm: about(2) },
    drillMm: about(12),
    pointDeg: about(136.4)
  }
  const { value } = stopSetting(opening).tipDepthMm
  expect(value).toBeCloseTo(leastStopMm(opening, [9, 9.01]), 3)
  expect(value).toBeGreaterThan(leastStopMm(opening, [8, 9.01]) + 0.05)
})

it('reads a rod in a cone by the rod alone, however wide the hole may be', () => {
  const opening: Opening = {
    ...elbow().opening,
    foundDiameterMm: about(9, 0.5),
    rodMm: about(9),
    bottom: { shape: 'cone', angleDeg: about(90) }
  }
  const tips = atCorners({ ...opening, foundDepthMm: about(24) }, x => oldHole(x).oldTipMm)
  for (const tipMm of tips) expect(tipMm).toBeCloseTo(28.5, 9)
})

describe('what stands behind the stop', () => {
  const { opening } = elbow()

  it('is exact, and not assumed when everything was given', () => {
    const { tipDepthMm } = stopSetting(opening)
    expect(tipDepthMm).toMatchObject({ assumed: undefined, at: ['tip-depth'] })
    expect(tipDepthMm.low).toBe(tipDepthMm.high)
  })

  it('names the defaults that move it, and only those', () => {
    const keepClearMm = new Given(0.5, { assumed: 'common practice', at: ['keep-clear'] })
    const pointDeg = new Given(118, { assumed: 'a common drill', at: ['point'] })
    const { tipDepthMm } = stopSetting({ ...opening, keepClearMm, pointDeg, bottom: { shape: 'flat', assumed: 'not said' } })
    // Over a flat the point angle does not matter to the tip.
    expect(tipDepthMm.assumed).toBe('keep-clear: common practice; bottom: not said')
  })
})

describe('no room', () => {
  const shallow = (lowMm: number): Opening => ({
    ...elbow().opening,
    foundDepthMm: new Given(lowMm + 0.5, { low: lowMm, high: lowMm + 1 })
  })

  it('above the face or level with it is said in words', () => {
    // 1.0 kept clear and 0.3 of stop error: a low end of 1.3 leaves nothing.
    expect(() => stopSetting(shallow(0.9))).toThrow(NoAnswer)
    expect(() => stopSetting(shallow(0.9))).toThrow('0.4 mm above the face')
    expect(() => stopSetting(shallow(0.844))).toThrow('0.46 mm above the face')
    expect(stopSetting(shallow(1.301)).tipDepthMm.value).toBeCloseTo(0.001, 9)
  })

  it('level with the face leaves nothing either', () => {
    const opening: Opening = { ...elbow().opening, foundDepthMm: about(1), keepClearMm: about(1), stopErrorMm: about(0) }
    expect(() => stopSetting(opening)).toThrow('level with the face')
  })
})

describe('what cannot be', () => {
  const { opening } = elbow()
  const refusal = (changed: Partial<Opening>): OutsideRange | undefined => {
    try {
      stopSetting({ ...opening, ...changed })
    } catch (error) {
      if (error instanceof OutsideRange) return error
      throw error
    }
    return undefined
  }

  it('a rod wider than the hole is refused, one that just fits is not', () => {
    const rodMm = about(9.1)
    expect(refusal({ rodMm })).toMatchObject({ found: 'rod is 9.1 mm', least: 0, greatest: 9, from: [rodMm, opening.foundDiameterMm] })
    expect(refusal({ rodMm: about(9) })).toBeUndefined()
    expect(refusal({ rodMm: about(9.1, 0.1) })).toBeUndefined()
  })

  it('a fillet wider than half the hole is refused, a round bottom is not, bounds and all', () => {
    expect(refusal({ bottom: { shape: 'radius', filletMm: about(4.6) } })?.found).toBe('fillet is 4.6 mm')
    expect(refusal({ bottom: { shape: 'radius', filletMm: about(4.5) } })).toBeUndefined()
    expect(refusal({ foundDiameterMm: about(9, 0.2), bottom: { shape: 'radius', filletMm: about(4.5) } })).toBeUndefined()
  })

  it('a cone sharper than 30° is out of range, 30° is not', () => {
    expect(refusal({ bottom: { shape: 'cone', angleDeg: about(29.9) } })?.input).toBe('angleDeg')
    expect(refusal({ bottom: { shape: 'cone', angleDeg: about(30) } })).toBeUndefined()
  })
})
