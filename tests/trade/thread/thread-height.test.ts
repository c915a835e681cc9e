// property: laws of the thread height
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { minorDiameterMm } from '../../../src/trade/thread/basic.ts'
import { formingDrillMm } from '../../../src/trade/thread/forming-drill.ts'
import { heightOn34Percent, heightOn58Percent } from '../../../src/trade/thread/thread-height.ts'

const holes = fc.record({
  majorMm: fc.double({ min: 20, max: 60, noNaN: true }),
  holeDiameterMm: fc.double({ min: 10, max: 20, noNaN: true }),
  triangleHeightMm: fc.double({ min: 0.2, max: 5, noNaN: true })
})

it('falls as the drill grows, on both bases', () => {
  fc.assert(
    fc.property(holes, x => {
      const wider = { ...x, holeDiameterMm: x.holeDiameterMm + 0.1 }
      expect(heightOn34Percent(wider)).toBeLessThan(heightOn34Percent(x))
      expect(heightOn58Percent(wider)).toBeLessThan(heightOn58Percent(x))
    })
  )
})

it('is 1.2 times as much on 5/8 H as on 3/4 H', () => {
  fc.assert(
    fc.property(holes, x => {
      expect(heightOn58Percent(x) / heightOn34Percent(x)).toBeCloseTo(1.2, 9)
    })
  )
})

it('is 100 % of 5/8 H at the basic minor diameter', () => {
  fc.assert(
    fc.property(holes, ({ majorMm, triangleHeightMm }) => {
      const holeDiameterMm = minorDiameterMm({ majorMm, triangleHeightMm })
      expect(heightOn58Percent({ majorMm, holeDiameterMm, triangleHeightMm })).toBeCloseTo(100, 6)
    })
  )
})

it('the hole for a forming tap is wider than D - P and narrower than D, and shrinks as more height is asked for', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.2, max: 6, noNaN: true }), fc.double({ min: 50, max: 99, noNaN: true }), (pitchMm, formedPercent) => {
      const holeMm = formingDrillMm({ majorMm: 30, pitchMm, formedPercent })
      expect(holeMm).toBeGreaterThan(30 - pitchMm)
      expect(holeMm).toBeLessThan(30)
      expect(formingDrillMm({ majorMm: 30, pitchMm, formedPercent: formedPercent + 1 })).toBeLessThan(holeMm)
    })
  )
})
