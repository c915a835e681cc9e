// property: laws of the mouth of a tapped hole; table: the triangle worked by hand, angles of the standard
import { expect, it } from 'vitest'
import { MOUTH_ANGLES_DEG, mouthAcrossMm, mouthChamfer, mouthDepthMm } from '../../../src/trade/thread/mouth-chamfer.ts'

// By hand: M10x1.5, D1 8.376, countersink 11.0 wide. 90°: (11 − 8.376)/2 · 1 = 1.312. 120°: 1.312 / tan 60° = 1.312/1.73205 = 0.7575.
it.each([
  { angleDeg: 90, depthMm: 1.312 },
  { angleDeg: 120, depthMm: 0.7575 }
] as const)('M10x1.5 at $angleDeg° loses $depthMm mm', ({ angleDeg, depthMm }) => {
  const mouth = mouthChamfer({ majorMm: 10, minorMm: 8.376, angleDeg })
  expect([mouth.leastMm, mouth.greatestMm]).toEqual([10, expect.closeTo(11, 9)])
  expect(Math.abs(mouth.depthMm - depthMm)).toBeLessThanOrEqual(0.0005)
})

// DIN 76-1: countersinks of 90 or 120 degrees (memory).
it('has the angles of its standard', () => {
  expect(MOUTH_ANGLES_DEG).toEqual([90, 120])
})

it('is countersunk to 90° where nobody says otherwise', () => {
  expect(mouthChamfer({ majorMm: 10, minorMm: 8.376 })).toEqual(mouthChamfer({ majorMm: 10, minorMm: 8.376, angleDeg: 90 }))
})

it('a wider countersink and a sharper one cost more thread', () => {
  const depth = (mouthDiameterMm: number, angleDeg: number) => mouthDepthMm({ mouthDiameterMm, minorMm: 8, angleDeg })
  expect(depth(11, 90)).toBeGreaterThan(depth(10, 90))
  expect(depth(11, 90)).toBeGreaterThan(depth(11, 120))
})

// By hand: M14x1.5, D1 14 − 1.0825·1.5 = 12.376, 0.7 mm deep at 90°: 12.376 + 1.4.
it('a countersink of 0.7 mm at 90° is twice that wider than its hole', () => {
  expect(mouthAcrossMm({ minorMm: 12.376, mouthMm: 0.7, angleDeg: 90 })).toBeCloseTo(13.776, 9)
})

it('is as deep as it was cut for', () => {
  for (const angleDeg of MOUTH_ANGLES_DEG) {
    const mouthDiameterMm = mouthAcrossMm({ minorMm: 8.376, mouthMm: 1.1, angleDeg })
    expect(mouthDepthMm({ mouthDiameterMm, minorMm: 8.376, angleDeg })).toBeCloseTo(1.1, 9)
  }
})
