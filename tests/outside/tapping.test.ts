// Table: cutting torque against worked examples, and its constants against the printed ones.
import { expect, test } from 'vitest'
import { TAP_FACTORS, TAPPED_MATERIALS, tapping } from '../../src/trade/joint/tapping-torque.ts'
import { TAPPING_ROWS } from './rows/joint-tapping.ts'

// Tc = tan(theta)·kc·K/24000·(D − Do)²·(D + 2 Do), theta 30°, a tap maker's formula and constants, computed (read-secondary).
// One edition prints the square on (D − Do), another loses it in the text: the square is right.
test.each([
  { majorMm: 8, holeMm: 6.8, cuttingMpa: 1300, tapFactor: 1.25, torqueNm: 1.216 },
  { majorMm: 10, holeMm: 9, cuttingMpa: 1300, tapFactor: 1.08, torqueNm: 0.946 },
  { majorMm: 8, holeMm: 7, cuttingMpa: 1300, tapFactor: 1.25, torqueNm: 0.86 }
])('$majorMm mm into $holeMm mm', ({ torqueNm, ...given }) => {
  expect(Math.abs(tapping(given).tappingTorqueNm - torqueNm)).toBeLessThanOrEqual(0.005)
})

test('constants as printed', () => {
  const rows = (item: string) => TAPPING_ROWS.filter(row => row.item === item).map(({ key, value }) => [key, value])
  expect(TAPPED_MATERIALS.map(({ material, cuttingMpa }) => [material, cuttingMpa])).toEqual(rows('kc_N_per_mm2'))
  expect(TAP_FACTORS.map(({ tap, tapFactor }) => [tap, tapFactor])).toEqual(rows('K_tap'))
})
