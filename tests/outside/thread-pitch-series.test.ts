// table: the ISO pitch series.
import { describe, expect, it } from 'vitest'
import { seriesSize } from '../../src/trade/thread/pitch-series.ts'
import { metricThreads } from '../../src/trade/thread/thread-list.ts'
import { ISO_BASIC } from './rows/iso-basic.ts'
import { ISO_LIMITS } from './rows/iso-limits.ts'
import { ISO_STRESS_AREAS } from './rows/iso-stress-area.ts'
import { METRIC_TAP_DRILLS } from './rows/metric-tap-drills.ts'
import { PITCH_SERIES } from './rows/pitch-series.ts'

const threads = metricThreads()
const coarse = threads.filter(({ series }) => series === 'coarse')

describe('shipped data: pitch series', () => {
  it('holds the pairs of ISO 261 and 262 from M1.6 to M36, and no other [read-secondary]', () => {
    const mine = threads.map(({ majorMm, pitchMm, series }) => `${majorMm} ${pitchMm} ${series}`)
    expect(mine.toSorted()).toEqual(PITCH_SERIES.map(({ majorMm, pitchMm, series }) => `${majorMm} ${pitchMm} ${series}`).toSorted())
    expect(mine).toHaveLength(96)
  })

  // ISO 261 puts M12 in column 1 of its table, M14 in column 2, M15 in column 3 (memory).
  it('says which choice a size is', () => {
    expect([12, 14, 15].map(majorMm => threads.find(each => each.majorMm === majorMm)?.choice)).toEqual(['first', 'second', 'third'])
    expect([12, 14, 15].map(majorMm => seriesSize(majorMm)?.choice)).toEqual(['first', 'second', 'third'])
  })

  it.each([
    ['basic diameters', ISO_BASIC],
    ['limits of size', ISO_LIMITS],
    ['stress areas', ISO_STRESS_AREAS],
    ['tap drills', METRIC_TAP_DRILLS]
  ] as const)('knows every thread that other sources name: %s', (_, rows) => {
    const names = threads.map(({ name }) => name)
    expect(rows.map(({ thread }) => thread).filter(thread => !names.includes(thread))).toEqual([])
  })

  it('names as coarse the pitch that tap drill lists call coarse', () => {
    const listed = METRIC_TAP_DRILLS.filter(({ source }) => source.startsWith('ISO 2306 coarse')).map(({ thread }) => thread)
    const names = coarse.map(({ name }) => name)
    expect(listed).toHaveLength(20)
    expect(listed.filter(thread => !names.includes(thread))).toEqual([])
  })

  it('makes a larger coarse thread no finer, and a fine pitch finer than the coarse one', () => {
    const pitches = coarse.map(({ pitchMm }) => pitchMm)
    expect(pitches).toEqual(pitches.toSorted((a, b) => a - b))
    for (const { majorMm, pitchMm, series } of threads) {
      const own = coarse.find(other => other.majorMm === majorMm)
      if (own !== undefined && series === 'fine') expect(pitchMm).toBeLessThan(own.pitchMm)
    }
  })
})
