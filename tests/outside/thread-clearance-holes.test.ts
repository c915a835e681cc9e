// table: clearance holes of ISO 273.
import { describe, expect, it } from 'vitest'
import { type ClearanceHole, clearanceHole } from '../../src/trade/thread/clearance-hole.ts'
import { seriesSizes } from '../../src/trade/thread/pitch-series.ts'
import { CLEARANCE_HOLES } from './rows/clearance-holes.ts'

const known = seriesSizes().flatMap(({ majorMm }) => {
  const hole = clearanceHole({ majorMm })
  return hole === null ? [] : [{ majorMm, ...hole }]
})

describe('shipped data: clearance holes', () => {
  it.each(CLEARANCE_HOLES)('$screw as reprinted [$source, $label]', ({ screw, fineMm, mediumMm, coarseMm }) => {
    expect(clearanceHole({ majorMm: Number(screw.slice(1)) })).toEqual({ fineMm, mediumMm, coarseMm, source: 'iso-273' })
  })

  it('says of the others that they are from memory', () => {
    expect(known.filter(({ source }) => source === 'iso-273-memory').map(({ majorMm }) => majorMm)).toEqual([2.5, 4, 6, 10, 22, 30])
    expect(known).toHaveLength(CLEARANCE_HOLES.length + 6)
  })

  it.each(known)('M$majorMm: fine < medium < coarse, all wider than the screw', ({ majorMm, fineMm, mediumMm, coarseMm }) => {
    expect([majorMm, fineMm, mediumMm, coarseMm]).toEqual([majorMm, fineMm, mediumMm, coarseMm].toSorted((a, b) => a - b))
    expect(new Set([majorMm, fineMm, mediumMm, coarseMm]).size).toBe(4)
  })

  // A row from memory must lie between its printed neighbours.
  it.each(['fineMm', 'mediumMm', 'coarseMm'] as const)('the play of %s never falls from one size to the next', key => {
    const play = known.map((hole: ClearanceHole & { majorMm: number }) => Number((hole[key] - hole.majorMm).toFixed(6)))
    expect(play).toEqual(play.toSorted((a, b) => a - b))
  })
})

it('has no hole for a size that the standard leaves out', () => {
  expect(clearanceHole({ majorMm: 9 })).toBeNull()
})
