// table: sizes, pitches and basic diameters of the unified series (rows/unified-series.ts). Tolerance: half the last digit printed.
import { describe, expect, it } from 'vitest'
import { basicSizes } from '../../src/trade/thread/basic.ts'
import { readUnified } from '../../src/trade/thread/unified-designation.ts'
import { unifiedThreads } from '../../src/trade/thread/unified-series.ts'
import { UNIFIED_SERIES_ROWS } from './rows/unified-series.ts'

const HALF_DIGIT_MM = 0.00005 * 25.4 + 1e-9

function thread(name: string) {
  const read = readUnified(name)
  if (!read.ok) throw new Error(read.fault.found)
  return read.value
}

describe.each(UNIFIED_SERIES_ROWS)('$thread $series', row => {
  const { majorMm, pitchMm, tpiCount, series } = thread(row.thread)

  it(`has the basic pitch diameter ${row.pitchDiameter} in and minor diameter ${row.minorDiameter} in`, () => {
    const { pitchDiameterMm, minorDiameterMm } = basicSizes({ majorMm, pitchMm })
    expect(Math.abs(pitchDiameterMm - Number(row.pitchDiameter) * 25.4)).toBeLessThanOrEqual(HALF_DIGIT_MM)
    expect(Math.abs(minorDiameterMm - Number(row.minorDiameter) * 25.4)).toBeLessThanOrEqual(HALF_DIGIT_MM)
  })

  it(`shipped data: ${row.series}, ${row.majorIn} in, ${row.tpi} to the inch`, () => {
    expect({ majorMm, tpiCount, series }).toEqual({
      majorMm: expect.closeTo(Number(row.majorIn) * 25.4, 9),
      tpiCount: row.tpi,
      series: row.series
    })
  })
})

it('shipped data: the program knows these threads and no others', () => {
  expect(
    unifiedThreads()
      .map(({ name }) => name)
      .sort()
  ).toEqual(UNIFIED_SERIES_ROWS.map(({ thread, series }) => `${thread} ${series}`).sort())
})

// ISO 68-1 and ASME B1.1: the external thread is 17/24 H = 0.61343 P high (read-secondary for 17/24 H = 0.613435 P).
it('the root stands 0.613435 P inside the crest', () => {
  const { majorMm, pitchMm } = thread('1/4-20 UNC')
  expect(Math.abs((majorMm - basicSizes({ majorMm, pitchMm }).rootDiameterMm) / 2 / pitchMm - 0.613435)).toBeLessThanOrEqual(0.0000005)
})
