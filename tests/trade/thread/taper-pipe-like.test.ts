// table: crests of 1/8 pipe by its standards (memory): NPT 9.986 to 10.287 mm, ISO 7 9.478 to 9.884 mm outside; inside 8.480 to 8.736 and 8.316 to 8.566
import { describe, expect, it } from 'vitest'
import { pipesLike } from '../../../src/trade/thread/taper-pipe-like.ts'

const names = (found: Parameters<typeof pipesLike>[0]) => pipesLike(found).map(({ thread }) => thread.name)
const [NPT, ISO] = ['1/8-27 NPT', 'R 1/8 (ISO 7)']

describe('a caliper that may be 0.03 mm off', () => {
  it.each([
    [9.44, []],
    [9.46, [ISO]],
    [9.9, [ISO]],
    [9.94, []],
    [9.97, [NPT]],
    [10.31, [NPT]],
    [10.33, []]
  ])('over the crests of a plug, %d mm: %j', (measuredMm, expected) => {
    expect(names({ measuredMm, side: 'external' })).toEqual(expected)
  })

  it.each([
    [8.27, []],
    [8.3, [ISO]],
    [8.5, [NPT, ISO]],
    [8.75, [NPT]],
    [8.78, []]
  ])('across the crests of a boss, %d mm: %j', (measuredMm, expected) => {
    expect(names({ measuredMm, side: 'internal' })).toEqual(expected)
  })
})

// 25.4/27 = 0.941 mm and 25.4/28 = 0.907 mm
describe('a pitch that may be 0.05 mm off', () => {
  const found = { measuredMm: 9.93, side: 'external', errorMm: 0.1 } as const

  it.each([
    [0.94, [NPT, ISO]],
    [0.91, [ISO, NPT]],
    [0.98, [NPT]],
    [0.9905, [NPT]],
    [0.991, []],
    [0.87, [ISO]],
    [1, []]
  ])('%d mm: %j, nearest first', (pitchMm, expected) => {
    expect(names({ ...found, pitchMm })).toEqual(expected)
  })

  it('says how far it is off, where one was measured', () => {
    expect(pipesLike({ ...found, pitchMm: 0.95 })[0]!.pitchOffMm).toBeCloseTo(0.95 - 25.4 / 27, 9)
    expect(pipesLike(found).map(({ pitchOffMm }) => pitchOffMm)).toEqual([null, null])
  })
})
