// table: pairs that the trade knows to be taken for each other (common practice), and which measurement splits them by their printed limits
import { describe, expect, it } from 'vitest'
import { candidates as known } from '../../src/trade/thread/identify-candidates.ts'
import { confusable } from '../../src/trade/thread/identify-confusable.ts'
import type { Candidate } from '../../src/trade/thread/identify-crest.ts'
import { tellApart } from '../../src/trade/thread/identify-tell.ts'

const ALL = known()

const metric = (majorMm: number, pitchMm: number) => ALL.find(each => each.name === `M${majorMm}x${pitchMm}`)!
const unified = (name: string) => ALL.find(each => each.name === name)!

// Gaps by hand from printed limits, 6g and 2A (read-secondary), inches times 25.4.
const PAIRS = [
  // M10x1.5 from 9.732; 3/8-16 2A up to 0.3737 in = 9.492 (memory): 0.240. Six threads: 9.0 and 9.525.
  { first: metric(10, 1.5), second: '3/8-16 UNC', by: 'diameter', gapMm: 0.24, driftMm: 0.525 },
  // M8x1.25 from 7.760; 5/16-18 2A up to 0.3113 in = 7.907: overlap 0.147. Five threads of 5/16: 6.25 and 7.056... 7.9375/1.4111 = 5.6.
  { first: metric(8, 1.25), second: '5/16-18 UNC', by: 'pitch', gapMm: -0.147, driftMm: 0.806 },
  // 1/4-20 2A from 0.2408 in = 6.116; M6x1 up to 5.974: 0.142. Five threads: 5.0 and 6.35.
  { first: metric(6, 1), second: '1/4-20 UNC', by: 'pitch', gapMm: 0.142, driftMm: 1.35 },
  // M5x0.8 from 5 − 0.024 − 0.150 = 4.826; #10-32 2A up to 0.1891 in = 4.803: 0.023. Six threads: 4.8 and 4.7625.
  { first: metric(5, 0.8), second: '#10-32 UNF', by: 'diameter', gapMm: 0.023, driftMm: 0.0375 },
  // The same gap within 0.0001 in: #10-24 2A up to 0.1890 in = 4.801. Four threads: 3.2 and 4.233.
  { first: metric(5, 0.8), second: '#10-24 UNC', by: 'pitch', gapMm: 0.025, driftMm: 1.033 }
] as const

describe.each(PAIRS)('$first.name and $second', ({ first, second, by, gapMm, driftMm }) => {
  const told = () => tellApart({ first, second: unified(second), side: 'external' })

  it(`the ${by} splits the screws`, () => {
    const tell = told()
    expect(tell.by).toBe(by)
    expect(tell.says).toContain(first.name)
    expect(tell.says).toContain(second)
  })

  it(`diameters ${gapMm} mm apart, threads drift ${driftMm} mm`, () => {
    const tell = told()
    expect(Math.abs(tell.diameterGapMm - gapMm)).toBeLessThanOrEqual(0.001)
    expect(Math.abs(tell.pitchGapMm - driftMm)).toBeLessThanOrEqual(0.0006)
  })

  it('either is named as taken for the other', () => {
    const pairsOf = (thread: Candidate) => confusable({ thread, candidates: ALL, side: 'external' }).map(each => each.second)
    expect(pairsOf(first)).toContain(second)
    expect(pairsOf(unified(second))).toContain(first.name)
  })
})

// A hole of M5x0.8 (6H minor 4.134 to 4.334) and of #10-32 (2B 0.156 to 0.164 in = 3.962 to 4.166) overlap, and their pitches differ by 0.006 mm.
it('the holes of M5x0.8 and #10-32 are split by neither', () => {
  const tell = tellApart({ first: metric(5, 0.8), second: unified('#10-32 UNF'), side: 'internal' })
  expect(tell.by).toBe('neither')
  expect(tell.diameterGapMm).toBeLessThan(0)
})

it('a screw of another size is not taken for it', () => {
  const pairs = confusable({ thread: metric(10, 1.5), candidates: ALL, side: 'external' }).map(({ second }) => second)
  for (const name of ['M8x1.25', 'M12x1.5', '1/4-20 UNC', '1/2-13 UNC', '3/8-24 UNF']) expect(pairs).not.toContain(name)
})
