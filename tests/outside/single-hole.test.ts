// table: one published figure for a formula of holes and threads that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import { pointGapMm, rimGapMm } from '../../src/trade/hole/clearance.ts'
import { clockShimMm, clockThinnerMm } from '../../src/trade/hole/clocking.ts'
import { shoulderTurns } from '../../src/trade/hole/gap.ts'
import { threadHeightMm, threadWallLeastMm } from '../../src/trade/hole/wall.ts'
import { mouthAcrossMm, mouthDepthMm } from '../../src/trade/thread/mouth-chamfer.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: invented hole, hand arithmetic: 24.0 ± 0.5 mm deep, stop at 22.2 ± 0.3 mm, of which 1.0 mm stays clear at the worst.
// Its rim, of a 9.0 mm hole, lies as much higher as a 118° point is long there, 2.704 mm (memory).
describe('gaps at the worst', () => {
  const worst = { oldTipMm: 23.5, tipDepthMm: 22.2, stopErrorMm: 0.3 }
  it('at the point', () => {
    expect(off(pointGapMm(worst), 1)).toBeLessThanOrEqual(1e-9)
  })
  it('at the rim', () => {
    expect(off(rimGapMm({ ...worst, rimGainMm: 2.704 }), 1 + 2.704)).toBeLessThanOrEqual(1e-9)
  })
})

// Source: the screw of a micrometer (memory): half a millimetre a turn, so fifty divisions are 0.01 mm each and 25 mm are fifty turns.
describe('a screw that measures', () => {
  const division = { pitchMm: 0.5, clockTurnDeg: 360 / 50 }
  it('one division', () => {
    expect(off(clockThinnerMm(division), 0.01)).toBeLessThanOrEqual(1e-9)
  })
  it('all but one', () => {
    expect(off(clockShimMm(division), 0.49)).toBeLessThanOrEqual(1e-9)
  })
  it('all turns', () => {
    expect(off(shoulderTurns({ threadLengthMm: 25, stackMm: 0, pitchMm: 0.5 }), 50)).toBeLessThanOrEqual(1e-9)
  })
})

// Source: ISO 68-1, H1 = 0.541266 of the pitch (read-secondary).
it('height of a thread', () => {
  expect(off(threadHeightMm({ pitchMm: 1 }), 0.541266)).toBeLessThanOrEqual(5e-7)
})

// Source: Alexander's factor begins at 1.4 diameters of metal (memory): the bore and a wall on each side.
it('the wall at which a thread can be worked out', () => {
  expect(off(12 + 2 * threadWallLeastMm({ majorMm: 12 }), 1.4 * 12)).toBeLessThanOrEqual(1e-9)
})

// Source: lengths of drill points, 1.408 mm of 6.8 mm at 135° and 2.704 mm of 9.0 mm at 118° (memory): a countersink that much wider than its hole is as deep.
it.each([
  [6.8, 135, 1.408],
  [9, 118, 2.704]
])('a countersink %d mm wider, %d°', (widerMm, angleDeg, printed) => {
  expect(off(mouthDepthMm({ mouthDiameterMm: 5 + widerMm, minorMm: 5, angleDeg }), printed)).toBeLessThanOrEqual(0.0005)
  // The same lengths the other way: at 135° half a thousandth of depth is 2.4 of them in width.
  expect(off(mouthAcrossMm({ minorMm: 5, mouthMm: printed, angleDeg }), 5 + widerMm)).toBeLessThanOrEqual(0.0025)
})
