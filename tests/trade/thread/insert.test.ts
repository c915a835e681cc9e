// property: laws of the insert; example: the list of mishaps, a wall by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { insertFor } from '../../../src/trade/thread/insert.ts'
import { MISHAPS } from '../../../src/trade/thread/insert-mishap.ts'
import * as wall from '../../../src/trade/thread/insert-wall.ts'

const threads = fc.record({ majorMm: fc.double({ min: 2, max: 40, noNaN: true }), pitchMm: fc.double({ min: 0.35, max: 4, noNaN: true }) })

it('its hole clears the thread it replaces, and each depth holds the one before', () => {
  fc.assert(
    fc.property(threads, ({ majorMm, pitchMm }) => {
      const insert = insertFor({ majorMm, pitchMm })
      expect(insert.minorMm).toBeGreaterThan(majorMm)
      expect(insert.pitchDiameterMm).toBeGreaterThan(insert.minorMm)
      expect(insert.majorMm).toBeGreaterThan(insert.pitchDiameterMm)
      expect(insert.wallFullMm).toBeGreaterThan(insert.wallLeastMm)
      expect(insert.wallLeastMm).toBeGreaterThan(insert.wallTakenMm)
      for (const { lengthMm, threadDepthMm, holeDepthMm } of insert.lengths) {
        expect(threadDepthMm).toBeGreaterThan(lengthMm)
        expect(holeDepthMm).toBeGreaterThan(threadDepthMm)
      }
    })
  )
})

it('a longer chamfer asks for a deeper hole by its own pitches', () => {
  const depth = (chamferTurns: number) => insertFor({ majorMm: 12, pitchMm: 1.5, chamferTurns }).lengths[0]!.holeDepthMm
  expect(depth(4) - depth(1.5)).toBeCloseTo(2.5 * 1.5, 9)
})

// By hand: 1 D of M12x1.5 is 12 long; 12 + 1.5 of thread; + (1.5 + 1) · 1.5 to the end of full diameter.
it('M12x1.5 of one diameter: 13.5 of thread in 17.25', () => {
  expect(insertFor({ majorMm: 12, pitchMm: 1.5 }).lengths[0]).toMatchObject({ lengthMm: 12, threadDepthMm: 13.5, holeDepthMm: 17.25 })
})

// Inserts are sold in lengths of 1, 1.5 and 2 diameters (memory).
it('M12x1.5 has lengths of 12, 18 and 24 mm', () => {
  expect(insertFor({ majorMm: 12, pitchMm: 1.5 }).lengths.map(({ lengthMm }) => lengthMm)).toEqual([12, 18, 24])
})

describe('mishaps of the trade', () => {
  it.each(MISHAPS)('$id says how it shows, what to do first and the way back', ({ id, says, shows, first, wayBack, source }) => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/)
    for (const text of [says, shows, first, wayBack]) expect(text.length).toBeGreaterThan(20)
    expect(source.label).toBe('common practice')
    expect([says, shows, first, wayBack].join(' ')).not.toMatch(/\bsafe/i)
  })

  it('names each once, the ones every workshop knows among them', () => {
    const ids = MISHAPS.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids).toEqual(expect.arrayContaining(['drilled-too-deep', 'broken-tap', 'crossed-thread', 'stripped']))
  })
})

// By hand: an insert of 14 mm in place of M12 takes 1 mm; 1.4 and 1.9 diameters leave 0.2 and 0.45 of 14 mm on a side.
it('needs a wall by the diameter of its own thread', () => {
  const insertWallTakenMm = wall.insertWallTakenMm({ insertMajorMm: 14, majorMm: 12 })
  expect(insertWallTakenMm).toBe(1)
  expect(wall.insertWallLeastMm({ insertWallTakenMm, insertMajorMm: 14 })).toBeCloseTo(3.8, 12)
  expect(wall.insertWallFullMm({ insertWallTakenMm, insertMajorMm: 14 })).toBeCloseTo(7.3, 12)
})
