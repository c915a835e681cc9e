// table: tap drills with their thread height on both bases. Tolerance: half the last digit printed.
import { describe, expect, it } from 'vitest'
import { triangleHeightMm } from '../../src/trade/thread/basic.ts'
import { readThread } from '../../src/trade/thread/designation.ts'
import { FORMED_PERCENT, formingDrillMm } from '../../src/trade/thread/forming-drill.ts'
import { heightOn34Percent, heightOn58Percent } from '../../src/trade/thread/thread-height.ts'
import { threadResults } from '../../src/trade/thread/thread-results.ts'
import { readClass } from '../../src/trade/thread/tolerance-class.ts'
import { METRIC_TAP_DRILLS } from './rows/metric-tap-drills.ts'

function resultsOf(name: string) {
  const thread = readThread(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  const toleranceClass = readClass('6H', thread.value)
  if (!toleranceClass.ok) throw new Error(toleranceClass.fault.found)
  return { thread: thread.value, results: threadResults({ thread: thread.value, toleranceClass: toleranceClass.value }) }
}

describe('thread height and place in the 6H limits', () => {
  it.each(METRIC_TAP_DRILLS)('$thread drilled $drillMm mm [$source, $label]', row => {
    const { thread, results } = resultsOf(row.thread)
    const x = { majorMm: thread.majorMm, holeDiameterMm: row.drillMm, triangleHeightMm: triangleHeightMm(thread) }
    expect(Math.abs(heightOn34Percent(x) - row.heightOn34Percent)).toBeLessThanOrEqual(0.05 + 1e-9)
    expect(Math.abs(heightOn58Percent(x) - row.heightOn58Percent)).toBeLessThanOrEqual(0.05 + 1e-9)
    expect(results.tapDrills.find(({ diameterMm }) => diameterMm === row.drillMm)?.within).toBe(row.within)
  })
})

// The sizes themselves are the program's own data; the rule D - P is the other way to them.
describe('shipped data: tap drills', () => {
  it.each(METRIC_TAP_DRILLS)('$thread: $drillMm mm is D - P to the nearest drill, and recommended', ({ thread: name, drillMm }) => {
    const { thread, results } = resultsOf(name)
    expect(Math.abs(drillMm - (thread.majorMm - thread.pitchMm))).toBeLessThanOrEqual(0.051)
    expect(results.tapDrills.filter(({ recommended }) => recommended).map(({ diameterMm }) => diameterMm)).toEqual([drillMm])
  })
})

describe('worked examples of tap makers', () => {
  // Tap maker catalogue, engagement ratio: read-secondary; tolerance of the row 0.05.
  it.each([
    { holeDiameterMm: 8.5, percent: 92.4 },
    { holeDiameterMm: 8.676, percent: 81.5 }
  ])('M10x1.5, hole $holeDiameterMm mm: $percent % of 5/8 H', ({ holeDiameterMm, percent }) => {
    const height = heightOn58Percent({ majorMm: 10, holeDiameterMm, triangleHeightMm: triangleHeightMm({ pitchMm: 1.5 }) })
    expect(Math.abs(height - percent)).toBeLessThanOrEqual(0.05)
  })

  // Stored web page, hole = D - 0.0130·%/n, and a tool maker's page, hole = D - P·%/76.98: read-secondary; the constants have three and four digits.
  it.each([
    { majorMm: 6.35, pitchMm: 1.27, holeDiameterMm: 0.2013 * 25.4, name: '1/4-20' },
    { majorMm: 10, pitchMm: 1.5, holeDiameterMm: 8.539, name: 'M10x1.5' }
  ])('$name, hole for 75 % of 3/4 H', ({ majorMm, pitchMm, holeDiameterMm }) => {
    const height = heightOn34Percent({ majorMm, holeDiameterMm, triangleHeightMm: triangleHeightMm({ pitchMm }) })
    expect(Math.abs(height - 75)).toBeLessThanOrEqual(0.2)
  })

  // Forming tap holes at 65 %: tool maker's page and stored web page, read-secondary; tolerance of the rows.
  it.each([
    { name: 'M10x1.5', majorMm: 10, pitchMm: 1.5, holeMm: 9.337, tolMm: 0.002 },
    { name: 'M8x1.25', majorMm: 8, pitchMm: 1.25, holeMm: 7.448, tolMm: 0.002 },
    { name: '1/2-13', majorMm: 12.7, pitchMm: 25.4 / 13, holeMm: 0.466 * 25.4, tolMm: 0.0001 * 25.4 }
  ])('$name, hole for a forming tap', ({ majorMm, pitchMm, holeMm, tolMm }) => {
    expect(Math.abs(formingDrillMm({ majorMm, pitchMm, formedPercent: FORMED_PERCENT }) - holeMm)).toBeLessThanOrEqual(tolMm)
  })
})
