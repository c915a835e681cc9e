// property: laws of the run-out
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { runOutMm } from '../../../src/trade/thread/run-out.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'

const pitches = fc.double({ min: 0.2, max: 6, noNaN: true })

it('a coarser pitch never runs out shorter', () => {
  fc.assert(
    fc.property(pitches, pitches, (a, b) => {
      expect(runOutMm({ pitchMm: Math.max(a, b) })).toBeGreaterThanOrEqual(runOutMm({ pitchMm: Math.min(a, b) }))
    })
  )
})

it('short is shorter, long is longer', () => {
  fc.assert(
    fc.property(pitches, pitchMm => {
      const [short, regular, long] = (['short', 'regular', 'long'] as const).map(form => runOutMm({ pitchMm, form }))
      expect(short!).toBeLessThan(regular!)
      expect(regular!).toBeLessThan(long!)
    })
  )
})

it.each([0, 0.19, 6.02, Number.NaN])('has none at a pitch of %d', pitchMm => {
  expect(() => runOutMm({ pitchMm })).toThrow(OutsideRange)
})

it('names the finest and the coarsest pitch that have one', () => {
  expect(() => runOutMm({ pitchMm: 6.02 })).toThrow(expect.objectContaining({ least: 0.2, greatest: 6 }))
})

it('between two pitches of the table it takes the coarser: 20 threads to the inch as 1.5 mm', () => {
  expect(runOutMm({ pitchMm: 25.4 / 20 })).toBe(runOutMm({ pitchMm: 1.5 }))
})

it('says which row it read', () => {
  const { working } = withWorking(() => runOutMm({ pitchMm: 25.4 / 18 }))
  expect(working.map(({ putIn }) => putIn)).toEqual(['pitch 1.4111 mm: row 1.5'])
})

it('a pitch nudged by rounding is the same pitch', () => {
  for (const pitchMm of [0.2, 1.5, 6]) {
    expect([runOutMm({ pitchMm: pitchMm * 1.001 }), runOutMm({ pitchMm: pitchMm * 0.999 })]).toEqual([
      runOutMm({ pitchMm }),
      runOutMm({ pitchMm })
    ])
  }
})

it.each(unifiedThreads())('$name has one', ({ pitchMm }) => {
  expect(runOutMm({ pitchMm })).toBeGreaterThan(3 * pitchMm)
})
