// Table: torque and preload by friction and by nut factor, against worked examples. Tolerance as each row states it.
import { expect, test } from 'vitest'
import { preloadN, preloadTorqueNm } from '../../src/trade/joint/preload.ts'
import { longArmMm, nutFactorArmMm, threadArmMm } from '../../src/trade/joint/torque-arm.ts'

function armMm(x: { pitchMm: number; pitchDiameterMm: number; friction: number; bearingDiameterMm: number }): number {
  const at = threadArmMm({ pitchMm: x.pitchMm, pitchDiameterMm: x.pitchDiameterMm, threadFrictionFactor: x.friction })
  return longArmMm({ threadArmMm: at, bearingDiameterMm: x.bearingDiameterMm, bearingFrictionFactor: x.friction })
}

// T = F (0.159 P + 0.577 d2 mu_th + Dkm/2 mu_b), ISO 16047 form, computed (memory).
test.each([
  {
    thread: 'M8x1.25',
    pitchMm: 1.25,
    pitchDiameterMm: 7.188,
    friction: 0.12,
    bearingDiameterMm: 10.665,
    preload: 18630,
    torqueNm: 24.91,
    off: 0.1
  },
  { thread: 'M10x1', pitchMm: 1, pitchDiameterMm: 9.35, friction: 0.15, bearingDiameterMm: 13, preload: 6000, torqueNm: 11.663, off: 0.02 }
])('$thread: torque for $preload N', row => {
  expect(Math.abs(preloadTorqueNm({ armMm: armMm(row), preloadN: row.preload }) - row.torqueNm)).toBeLessThanOrEqual(row.off)
})

test('M8x1: preload of 8 N·m (computed, memory)', () => {
  const arm = armMm({ pitchMm: 1, pitchDiameterMm: 7.35, friction: 0.14, bearingDiameterMm: 10.3 })
  expect(Math.abs(preloadN({ torqueNm: 8, armMm: arm }) - 5426)).toBeLessThanOrEqual(20)
})

// Shigley 9th ed. example 8-3 (answers 3750 and 3551 lbf·in: memory). Its long form keeps the product of lead and friction,
// which the ISO form leaves out (0.3 %). 3/4-16: mean of major and root (from Ar = 0.351 in2) 0.7093 in, collar 1.25 d, all friction 0.15.
test('3/4-16, 25 kip', () => {
  const meanIn = (0.75 + Math.sqrt((4 * 0.351) / Math.PI)) / 2
  const inch = { pitchMm: 25.4 / 16, pitchDiameterMm: 25.4 * meanIn, friction: 0.15, bearingDiameterMm: 1.25 * 0.75 * 25.4 }
  const torqueLbfIn = (25000 * armMm(inch)) / 25.4
  expect(Math.abs(torqueLbfIn / 3551 - 1)).toBeLessThanOrEqual(0.003)
  expect((25000 * nutFactorArmMm({ nutFactor: 0.2, majorMm: 0.75 * 25.4 })) / 25.4).toBeCloseTo(3750, 6)
})

test('10 N·m at K 0.20 and 8 mm give 6.25 kN (computed, common practice)', () => {
  const arm = nutFactorArmMm({ nutFactor: 0.2, majorMm: 8 })
  expect(Math.abs(preloadN({ torqueNm: 10, armMm: arm }) - 6250)).toBeLessThanOrEqual(1)
})

// Torque from a journal example, result computed (read-secondary). 1 lbf·in = 0.1129848290276167 N·m, 1 lbf = 4.4482216152605 N, exact.
test('60 lbf·in on a 1/4-28 at K 0.20 give 1200 lbf', () => {
  const arm = nutFactorArmMm({ nutFactor: 0.2, majorMm: 6.35 })
  const pulledN = preloadN({ torqueNm: 60 * 0.1129848290276167, armMm: arm })
  expect(Math.abs(pulledN / 4.4482216152605 - 1200)).toBeLessThanOrEqual(0.1)
})
