// table: run-out of blind holes (rows/run-out.ts)
import { describe, expect, it } from 'vitest'
import { runOutMm } from '../../src/trade/thread/run-out.ts'
import { RUN_OUT_ROWS } from './rows/run-out.ts'

describe('shipped data: DIN 76-1, regular', () => {
  it.each(RUN_OUT_ROWS)('pitch $pitchMm: $runOutMm', row => {
    expect(runOutMm({ pitchMm: row.pitchMm })).toBe(row.runOutMm)
  })

  // By another route: the run-out holds the chamfer of a tap and some room, so it grows with the pitch, and never faster than in proportion but for rounding to 0.1 mm.
  it.each(RUN_OUT_ROWS.slice(1).map((row, i) => ({ ...row, before: RUN_OUT_ROWS[i]! })))(
    'pitch $pitchMm: longer, but fewer pitches',
    row => {
      expect(row.runOutMm).toBeGreaterThan(row.before.runOutMm)
      expect(row.runOutMm / row.pitchMm).toBeLessThan(1.02 * (row.before.runOutMm / row.before.pitchMm))
    }
  )

  // Chamfer lead of a second tap 3 to 5 pitches and one pitch of room (tap makers, read-secondary): 4 to 6.5 pitches in all.
  it.each(RUN_OUT_ROWS)('pitch $pitchMm: room for a second tap', ({ pitchMm, runOutMm: printed }) => {
    expect(printed / pitchMm).toBeGreaterThanOrEqual(4)
    expect(printed / pitchMm).toBeLessThanOrEqual(6.5)
  })
})

// Drilled depths worked with e1 (read-secondary).
it.each([
  { thread: 'M8x1.25', pitchMm: 1.25, usableMm: 12, drilledMm: 18.2 },
  { thread: 'M6x1', pitchMm: 1, usableMm: 10, drilledMm: 15.1 }
])('$thread: $usableMm mm of thread is drilled $drilledMm mm', ({ pitchMm, usableMm, drilledMm }) => {
  expect(usableMm + runOutMm({ pitchMm })).toBeCloseTo(drilledMm, 9)
})

// DIN 76-1 short and long columns, from memory: printed e2 is about 0.6 e1, e3 about 1.5 e1.
it.each([
  { form: 'short', pitchMm: 1, printedMm: 3.2 },
  { form: 'short', pitchMm: 1.5, printedMm: 4.5 },
  { form: 'long', pitchMm: 1, printedMm: 7.7 }
] as const)('$form at $pitchMm: about $printedMm mm', ({ form, pitchMm, printedMm }) => {
  expect(Math.abs(runOutMm({ pitchMm, form }) / printedMm - 1)).toBeLessThan(form === 'long' ? 0.007 : 0.05)
})
