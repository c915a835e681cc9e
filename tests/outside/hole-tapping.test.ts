// table: run-out and depth of tapped blind holes
import { describe, expect, it } from 'vitest'
import { runOutMm } from '../../src/trade/hole/run-out.ts'
import { threadDepthMm, usableThreadMm } from '../../src/trade/hole/tapping.ts'
import { readTaps, USUAL_TAPS } from '../../src/trade/hole/taps.ts'

// DIN 76-1 regular run-out e1 added to the usable thread (read-secondary, seen in an open-source part library). Printed to 0.1 mm, sums exact.
it.each([
  { thread: 'M8x1.25', pitchMm: 1.25, usableMm: 12, drilledMm: 18.2 },
  { thread: 'M6x1', pitchMm: 1, usableMm: 10, drilledMm: 15.1 }
])('$thread drilled $drilledMm mm deep has $usableMm mm of usable thread', ({ pitchMm, usableMm, drilledMm }) => {
  expect(usableThreadMm({ fullDiameterDepthMm: drilledMm, runOutMm: runOutMm(pitchMm)! })).toBeCloseTo(usableMm, 9)
})

// DIN 76-1, regular, all rows of the table (read-secondary).
describe.each([
  [0.2, 1.3],
  [0.25, 1.5],
  [0.3, 1.8],
  [0.35, 2.1],
  [0.4, 2.3],
  [0.45, 2.6],
  [0.5, 2.8],
  [0.6, 3.4],
  [0.7, 3.8],
  [0.75, 4],
  [0.8, 4.2],
  [1, 5.1],
  [1.25, 6.2],
  [1.5, 7.3],
  [1.75, 8.3],
  [2, 9.3],
  [2.5, 11.2],
  [3, 13.1],
  [3.5, 15.2],
  [4, 16.8],
  [4.5, 18.4],
  [5, 20.8],
  [5.5, 22.4],
  [6, 24]
])('pitch %d', (pitchMm, e1) => {
  it(`has a run-out of ${e1} mm`, () => {
    expect(runOutMm(pitchMm)).toBe(e1)
  })
})

it.each([80, 72, 64, 56, 48, 44, 40, 36, 32, 28, 24, 20, 18, 16, 14, 13, 12, 11, 10, 9, 8, 7, 6])(
  '%d threads to the inch are not in the metric table',
  tpi => {
    expect(runOutMm(25.4 / tpi)).toBeNull()
  }
)

// Full-diameter depth of M5x0.8 with 8 mm of thread, a chamfer of 5 pitches and 1 pitch beyond: 8 + 4 + 0.8 = 12.8 mm (memory, invented inputs).
it('a tap of 5 pitches, one pitch off, leaves 8 mm of thread in 12.8 mm', () => {
  expect(threadDepthMm({ fullDiameterDepthMm: 12.8, tapClearMm: 0.8, chamferTurns: 5, pitchMm: 0.8 })).toBeCloseTo(8, 9)
})

// Chamfer leads of a tap maker's catalogue, in pitches (read-secondary).
it.each([
  { name: 'taper', least: 7, greatest: 10 },
  { name: 'second', least: 3, greatest: 5 },
  { name: 'bottoming', least: 1, greatest: 2 }
])('the usual $name tap lies within $least to $greatest pitches', ({ name, least, greatest }) => {
  const taps = readTaps(USUAL_TAPS)
  const chamfer = taps.ok ? taps.value.find(tap => tap.name === name)!.chamferTurns.value : Number.NaN
  expect(chamfer).toBeGreaterThanOrEqual(least)
  expect(chamfer).toBeLessThanOrEqual(greatest)
})
