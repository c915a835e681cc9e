// table: run-out and depth of tapped blind holes
import { expect, it } from 'vitest'
import { threadDepthMm, usableThreadMm } from '../../src/trade/hole/tapping.ts'
import { readTaps, USUAL_TAPS } from '../../src/trade/hole/taps.ts'
import { runOutMm } from '../../src/trade/thread/run-out.ts'

// DIN 76-1 regular run-out e1 added to the usable thread (read-secondary, seen in an open-source part library). Printed to 0.1 mm, sums exact.
it.each([
  { thread: 'M8x1.25', pitchMm: 1.25, usableMm: 12, drilledMm: 18.2 },
  { thread: 'M6x1', pitchMm: 1, usableMm: 10, drilledMm: 15.1 }
])('$thread drilled $drilledMm mm deep has $usableMm mm of usable thread', ({ pitchMm, usableMm, drilledMm }) => {
  expect(usableThreadMm({ fullDiameterDepthMm: drilledMm, runOutMm: runOutMm({ pitchMm }) })).toBeCloseTo(usableMm, 9)
})

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
