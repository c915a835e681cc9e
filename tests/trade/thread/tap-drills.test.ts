// property: the table of tap drills, for every thread
import { describe, expect, it } from 'vitest'
import { DRILL_SETS } from '../../../src/trade/thread/drill.ts'
import { drillsOf } from '../../../src/trade/thread/drill-sets.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'
import { resultsOf } from './known-thread.ts'

describe.each([...metricThreads(), ...unifiedThreads()])('$name', ({ name, system, majorMm, pitchMm }) => {
  it('holds every drill from the basic minor diameter to half the height on 3/4 H', () => {
    const greatestMm = majorMm - 0.5 * 1.299038 * pitchMm
    const { tapDrills, minor } = resultsOf(name)
    const expected = DRILL_SETS.flatMap(drillsOf).filter(({ diameterMm }) => diameterMm >= minor.basicMm && diameterMm <= greatestMm)
    expect(tapDrills.map(row => row.name).toSorted()).toEqual(expected.map(drill => drill.name).toSorted())
  })

  it('gives less height to each wider drill', () => {
    const { tapDrills } = resultsOf(name)
    for (const [i, row] of tapDrills.entries()) {
      const wider = tapDrills[i + 1]
      if (wider === undefined) continue
      expect(wider.diameterMm).toBeGreaterThanOrEqual(row.diameterMm)
      expect(wider.heightOn34Percent).toBeLessThanOrEqual(row.heightOn34Percent)
    }
  })

  it('is within from some drill down, and out above; a unified limit may be rounded up from basic', () => {
    const { tapDrills, internal } = resultsOf(name)
    const turns = tapDrills.filter((row, i) => i > 0 && row.within !== tapDrills[i - 1]!.within)
    expect(turns.length).toBeLessThanOrEqual(system === 'metric' ? 1 : 2)
    const { minMm, maxMm } = internal.minor
    for (const row of tapDrills) expect(row.within).toBe(row.diameterMm >= minMm && row.diameterMm <= maxMm)
  })
})

it.each(metricThreads())('$name has one recommended drill of the metric set, within the limits', ({ name }) => {
  const { tapDrills, published } = resultsOf(name)
  const recommended = tapDrills.filter(row => row.recommended)
  expect(recommended.filter(({ set }) => set === 'metric')).toHaveLength(1)
  expect(recommended[0]).toMatchObject({ diameterMm: published.diameterMm, within: true })
  expect(published.drill?.diameterMm).toBe(published.diameterMm)
})
