// table: one hole of each bottom, invented data, arithmetic by hand in the comment; cot 59° = 0.60086 from a table of tangents (memory)
import { expect, it } from 'vitest'
import { plainOf } from '../../src/formula/given.ts'
import { oldHole } from '../../src/trade/hole/old-hole.ts'
import { type Opening, stopSetting } from '../../src/trade/hole/stop.ts'
import { about, elbow } from '../trade/hole/invented.ts'

const opened = (changed: Partial<Opening>): Opening => ({ ...elbow().opening, keepClearMm: about(0.5), stopErrorMm: about(0), ...changed })

function planned(changed: Partial<Opening>) {
  const opening = opened(changed)
  return { tipMm: oldHole(plainOf(opening).plain).oldTipMm, stop: stopSetting(opening) }
}

// Flat, felt with a 6 mm rod: the rod stands on the flat, so it reads true. 18.0 − 0.25 low; the point is nearest: 17.75 − 0.5 − 0.1 = 17.15.
it('flat bottom: the point is nearest and the rod reads true', () => {
  const { tipMm, stop } = planned({ foundDepthMm: about(18, 0.25), rodMm: about(6), stopErrorMm: about(0, 0.1) })
  expect(tipMm).toBe(18)
  expect(stop.first).toBe('point')
  expect(stop.tipDepthMm.value).toBeCloseTo(17.15, 9)
})

// Cone of 90° in a 10 mm hole, felt with a 6 mm rod at 20.0 ± 0.4: the rod stands 3 · cot 45° = 3.0 above the tip: old tip 23.0.
// At the rim, 5 mm out, the old floor is 5 · cot 45° = 5.0 higher: 18.0, low 17.6. The 12 mm drill of 118° is 5 · 0.60086 = 3.0043 higher there.
// Stop at the rim 17.6 + 3.0043 − 0.5 − 0.1 = 20.0043; at the point 22.6 − 0.6 = 22.0. The rim is nearest.
it('sharper cone: the rim is nearest, and a rod reads short', () => {
  const { tipMm, stop } = planned({
    foundDiameterMm: about(10),
    foundDepthMm: about(20, 0.4),
    rodMm: about(6),
    bottom: { shape: 'cone', angleDeg: about(90) },
    drillMm: about(12),
    stopErrorMm: about(0, 0.1)
  })
  expect(tipMm).toBeCloseTo(23, 9)
  expect(stop.first).toBe('rim')
  expect(Math.abs(stop.tipDepthMm.value - 20.0043)).toBeLessThanOrEqual(0.00005)
})

// The same hole with a blunt bottom of 140°: tan 70° = 2.7475, so the rod stands 3/2.7475 = 1.0919 above the tip: 21.0919. The drill of 118° is
// sharper than the bottom, so its point is nearest: 21.0919 − 0.5 = 20.5919.
it('blunter cone: the point is nearest', () => {
  const { tipMm, stop } = planned({
    foundDiameterMm: about(10),
    foundDepthMm: about(20),
    rodMm: about(6),
    bottom: { shape: 'cone', angleDeg: about(140) },
    drillMm: about(12)
  })
  expect(Math.abs(tipMm - 21.0919)).toBeLessThanOrEqual(0.0001)
  expect(stop.first).toBe('point')
  expect(Math.abs(stop.tipDepthMm.value - 20.5919)).toBeLessThanOrEqual(0.0001)
})

// Fillet of 4 mm in a 12 mm hole: flat out to 2 mm. A rod of 8.8 mm reaches 4.4 − 2 = 2.4 mm into the fillet and stands 4 − √(16 − 5.76) = 0.8 high:
// found at 15.0, old tip 15.8. At the wall, 6 mm out, the fillet is 4 mm high, the 14 mm drill of 118° only 6 · 0.60086 = 3.6052.
// Stop at the rim 15.8 − 4 + 3.6052 − 0.5 = 14.9052; at the point 15.3. The rim is nearest.
it('radiused bottom: the fillet meets the rim first, and a wide rod stands on it', () => {
  const { tipMm, stop } = planned({
    foundDiameterMm: about(12),
    foundDepthMm: about(15),
    rodMm: about(8.8),
    bottom: { shape: 'radius', filletMm: about(4) },
    drillMm: about(14)
  })
  expect(tipMm).toBeCloseTo(15.8, 9)
  expect(stop.first).toBe('rim')
  expect(Math.abs(stop.tipDepthMm.value - 14.9052)).toBeLessThanOrEqual(0.00005)
})

// The same fillet, opened by a 9.6 mm drill that is narrower than the hole: its rim, 4.8 mm out, stands over 2.8 mm of the fillet,
// 4 − √(16 − 7.84) = 4 − 2.85657 = 1.14343 high, the drill 4.8 · 0.60086 = 2.88413: the point is nearest, 15.8 − 0.5 = 15.3.
it('radiused bottom under a narrow drill: the point is nearest', () => {
  const { stop } = planned({
    foundDiameterMm: about(12),
    foundDepthMm: about(15),
    rodMm: about(8.8),
    bottom: { shape: 'radius', filletMm: about(4) },
    drillMm: about(9.6)
  })
  expect(stop.first).toBe('point')
  expect(stop.tipDepthMm.value).toBeCloseTo(15.3, 9)
})
