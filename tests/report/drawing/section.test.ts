// property: what a section says of a point; example: a boss by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { depthAt, extentOf, stuffAt } from '../../../src/report/drawing/section.ts'
import { BOSS, SEATED } from './invented.ts'

describe('depth of an outline', () => {
  it.each([
    [0, 18],
    [2.5, 16.5],
    [5, 15],
    [5.1, 0]
  ])('at radius %d it is %d', (radiusMm, depthMm) => {
    expect(depthAt(BOSS.drilled, radiusMm)).toBeCloseTo(depthMm, 9)
  })
})

describe('a boss', () => {
  it.each([
    ['in the old hole', 0, 19, 'air'],
    ['cut by the drill', 4.5, 5, 'drilled'],
    ['under the drilled shoulder', 4.5, 16, 'metal'],
    ['cut by the tap', 5.5, 9.9, 'thread'],
    ['below the thread', 5.5, 10.1, 'metal'],
    ['under the old bottom', 0, 20.1, 'metal'],
    ['behind the metal', 0, 25.1, 'outside'],
    ['above the face', 8, -0.1, 'outside'],
    ['beside the boss', 10.1, 5, 'outside'],
    ['the other side goes on', -10.1, 5, 'metal']
  ])('%s', (_, acrossMm, depthMm, stuff) => {
    expect(stuffAt(BOSS, acrossMm, depthMm)).toBe(stuff)
  })

  const deep = { ...SEATED, part: { ...SEATED.part!, threadEndMm: 13, endMm: 14 } }
  it('its thread below that of the hole jams', () => {
    expect([stuffAt(deep, 5.5, 10.1), stuffAt(deep, 5.5, 13.1), stuffAt(deep, 4.9, 13.5)]).toEqual(['jam', 'metal', 'part'])
  })

  it.each([
    ['its thread in that of the hole', 5.5, 8, 'engaged'],
    ['its core', 4.9, 10.9, 'part'],
    ['below its end', 0, 11.1, 'air'],
    ['its terminal', 8, -0.5, 'stack'],
    ['its shoulder', 8, -1.5, 'part'],
    ['beside the shoulder', 9.1, -0.5, 'outside']
  ])('with a part: %s', (_, acrossMm, depthMm, stuff) => {
    expect(stuffAt(SEATED, acrossMm, depthMm)).toBe(stuff)
  })
})

it('both sides of the axis are alike, but for the nearest face', () => {
  const round = { ...SEATED, sideMm: null }
  fc.assert(
    fc.property(fc.double({ min: 0, max: 15, noNaN: true }), fc.double({ min: -6, max: 30, noNaN: true }), (radiusMm, depthMm) => {
      expect(stuffAt(round, radiusMm, depthMm)).toBe(stuffAt(round, -radiusMm, depthMm))
    })
  )
})

it('reaches over everything that is drawn and named', () => {
  const { topMm, bottomMm, leftMm, rightMm } = extentOf({ ...SEATED, marks: [{ depthMm: 40, text: 'far' }] })
  expect(topMm).toBeLessThan(-1)
  expect(bottomMm).toBeGreaterThan(40)
  expect(leftMm).toBeLessThan(-9)
  expect(rightMm).toBeGreaterThan(10)
})
