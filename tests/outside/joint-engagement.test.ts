// Table: engagement a casting needs, against worked examples. Tolerance as each row states it.
import { expect, test } from 'vitest'
import { internalShearWidthMm } from '../../src/trade/joint/shear-area.ts'
import { engagementRequiredMm } from '../../src/trade/joint/strip.ts'

// LE = F/(tau·(pi/P)·ds·(P/2 + 0.57735·(ds − En))), FED-STD-H28/2B formula (read-secondary), 6g least major, 6H greatest pitch diameter.
// M10x1.5: a handbook puts the greatest major diameter in place of the least and comes out some 15 % short; the row is the right one.
const TABLE = [
  { thread: 'M10x1.5', loadN: 69600, shearMpa: 130, pitchMm: 1.5, majorMinMm: 9.732, pitchMaxMm: 9.206, engagementMm: 24.93 },
  { thread: 'M8x1.25', loadN: 29200, shearMpa: 190, pitchMm: 1.25, majorMinMm: 7.76, pitchMaxMm: 7.348, engagementMm: 9.13 },
  { thread: 'M10x1', loadN: 51600, shearMpa: 190, pitchMm: 1, majorMinMm: 9.794, pitchMaxMm: 9.5, engagementMm: 13.18 }
]
test.each(TABLE)('$thread under $loadN N', row => {
  const widthMm = internalShearWidthMm({ pitchMm: row.pitchMm, screwMajorMinMm: row.majorMinMm, holePitchMaxMm: row.pitchMaxMm })
  const engagementMm = engagementRequiredMm({ breakingLoadN: row.loadN, castingShearMpa: row.shearMpa, internalShearWidthMm: widthMm })
  expect(Math.abs(engagementMm - row.engagementMm)).toBeLessThanOrEqual(0.02)
})
