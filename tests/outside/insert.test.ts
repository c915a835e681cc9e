// table: tapped holes for wire thread inserts as insert charts print them, and dilation factors (all memory)
import { describe, expect, it } from 'vitest'
import { insertFor } from '../../src/trade/thread/insert.ts'
import { insertHeightPercent } from '../../src/trade/thread/insert-hole.ts'

// ASME B18.29.1 and B18.29.2, tapped hole: least minor and least pitch diameter (memory). Tolerance: one of the last digit printed.
const HOLES = [
  { thread: 'M6x1', majorMm: 6, pitchMm: 1, minorMm: 6.217, pitchDiameterMm: 6.65, digitMm: 0.001 },
  { thread: 'M8x1.25', majorMm: 8, pitchMm: 1.25, minorMm: 8.271, pitchDiameterMm: 8.812, digitMm: 0.001 },
  { thread: 'M10x1.5', majorMm: 10, pitchMm: 1.5, minorMm: 10.324, pitchDiameterMm: 10.974, digitMm: 0.001 },
  { thread: '1/4-20', majorMm: 6.35, pitchMm: 1.27, minorMm: 0.2608 * 25.4, pitchDiameterMm: 0.2825 * 25.4, digitMm: 0.00254 }
]

it.each(HOLES)('$thread', ({ majorMm, pitchMm, minorMm, pitchDiameterMm, digitMm }) => {
  const insert = insertFor({ majorMm, pitchMm })
  expect(Math.abs(insert.minorMm - minorMm)).toBeLessThanOrEqual(digitMm)
  expect(Math.abs(insert.pitchDiameterMm - pitchDiameterMm)).toBeLessThanOrEqual(digitMm)
})

// Its own thread has the basic profile: major less minor is 1.082532 P, as on any ISO thread (read-secondary).
it.each(HOLES)('$thread: the hole has a full basic thread', ({ majorMm, pitchMm }) => {
  const insert = insertFor({ majorMm, pitchMm })
  expect(Math.abs((insert.majorMm - insert.minorMm) / pitchMm - 1.082532)).toBeLessThanOrEqual(0.000001)
  expect(insertHeightPercent({ insertMajorMm: insert.majorMm, holeMm: insert.minorMm, pitchMm })).toBeCloseTo(100, 3)
})

// Dilation of a tapped boss of width s (Alexander, VDI 2230; memory): C1 = 3.8 s/d − (s/d)² − 2.61 for 1.4 ≤ s/d < 1.9, then 1.
// The least wall must be the start of that range, the full wall its end, measured from the thread that is there now.
describe.each(HOLES)('$thread: wall', ({ majorMm, pitchMm }) => {
  const { majorMm: insertMajorMm, wallLeastMm, wallFullMm, wallTakenMm } = insertFor({ majorMm, pitchMm })
  const widthRatio = (wallMm: number) => (majorMm + 2 * wallMm) / insertMajorMm
  const strength = (ratio: number) => 3.8 * ratio - ratio ** 2 - 2.61

  it('the least is 1.4 diameters of the hole wide, the full 1.9, where nothing is lost', () => {
    expect(widthRatio(wallLeastMm)).toBeCloseTo(1.4, 9)
    expect(widthRatio(wallFullMm)).toBeCloseTo(1.9, 9)
    expect(strength(widthRatio(wallFullMm))).toBeCloseTo(1, 9)
    expect(strength(widthRatio(wallLeastMm))).toBeLessThan(0.9)
  })

  it('the hole takes 0.65 of a pitch from it', () => {
    expect(Math.abs(wallTakenMm / pitchMm - 0.65)).toBeLessThanOrEqual(0.001)
  })
})
