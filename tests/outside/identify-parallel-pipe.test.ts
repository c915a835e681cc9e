// table: parallel pipe threads by the limits of ISO 228-1 (memory), and what a caliper finds on them
import { describe, expect, it } from 'vitest'
import { identify } from '../../src/trade/thread/identify.ts'
import { candidates as known } from '../../src/trade/thread/identify-candidates.ts'
import type { Side } from '../../src/trade/thread/identify-crest.ts'
import { parallelPipesLike } from '../../src/trade/thread/parallel-pipe.ts'

const candidates = known()

// ISO 228-1 (memory), limits in mm: major diameter of the screw, minor diameter of the hole; threads to the inch.
const ROWS = [
  ['G 1/16', 28, [7.509, 7.723], [6.561, 6.843]],
  ['G 1/8', 28, [9.514, 9.728], [8.566, 8.848]],
  ['G 1/4', 19, [12.907, 13.157], [11.445, 11.89]],
  ['G 3/8', 19, [16.412, 16.662], [14.95, 15.395]],
  ['G 1/2', 14, [20.671, 20.955], [18.631, 19.172]],
  ['G 5/8', 14, [22.627, 22.911], [20.587, 21.128]],
  ['G 3/4', 14, [26.157, 26.441], [24.117, 24.658]],
  ['G 7/8', 14, [29.917, 30.201], [27.877, 28.418]],
  ['G 1', 11, [32.889, 33.249], [30.291, 30.931]],
  ['G 1 1/4', 11, [41.55, 41.91], [38.952, 39.592]],
  ['G 1 1/2', 11, [47.443, 47.803], [44.845, 45.485]],
  ['G 2', 11, [59.254, 59.614], [56.656, 57.296]]
] as const

const like = (measuredMm: number, side: Side, rest = {}) => parallelPipesLike({ measuredMm, side, errorMm: 0.0001, ...rest })

describe.each(ROWS)('shipped data: %s', (name, tpi, screw, hole) => {
  const own = expect.objectContaining({
    candidate: expect.objectContaining({ name: `${name} (ISO 228-1)`, tpiCount: tpi }),
    verdict: 'fits'
  })

  it.each([
    ['external', screw],
    ['internal', hole]
  ] as const)('at both limits and between, pitch told or not, %s', (side, [least, greatest]) => {
    for (const mm of [least, (least + greatest) / 2, greatest]) {
      expect(like(mm, side)).toContainEqual(own)
      expect(like(mm, side, { pitchMm: 25.4 / tpi })).toContainEqual(own)
      expect(like(mm, side, { pitchMm: 25.4 / tpi + 0.1 })).toEqual([])
    }
  })

  it('a screw too thick and a hole too narrow is none; a worn one is told as worn', () => {
    expect(like(screw[1] + 0.001, 'external')).toEqual([])
    expect(like(hole[0] - 0.001, 'internal')).toEqual([])
    expect(like(screw[0] - 0.05, 'external')).toMatchObject([{ verdict: 'fits if worn' }])
    expect(like(hole[1] + 0.05, 'internal')).toMatchObject([{ verdict: 'fits if worn' }])
  })
})

// Each also lies where a thread of the series measures so, sound or worn.
describe.each([
  [11.6, 'internal', 'G 1/4', '19 threads to the inch (pitch 1.337 mm)'],
  [15.2, 'internal', 'G 3/8', '19 threads to the inch (pitch 1.337 mm)'],
  [18.8, 'internal', 'G 1/2', '14 threads to the inch (pitch 1.814 mm)'],
  [9.7, 'external', 'G 1/8', '28 threads to the inch (pitch 0.907 mm)'],
  [16.6, 'external', 'G 3/8', '19 threads to the inch (pitch 1.337 mm)'],
  [26.4, 'external', 'G 3/4', '14 threads to the inch (pitch 1.814 mm)']
] as const)('%d mm, %s', (measuredMm, side, name, told) => {
  it.each([undefined, 0])(`is told as ${name} too, with what tells it, taper %s`, taperRatio => {
    const result = identify({ measuredMm, side, candidates, taperRatio })
    if (result.kind !== 'parallel') throw new Error('tapered')
    expect(result.parallelPipes).toMatchObject([{ candidate: { name: `${name} (ISO 228-1)` }, verdict: 'fits' }])
    const pipe = `${name} (ISO 228-1)`
    expect(result.tells.find(({ first, second }) => [first, second].includes(pipe))).toMatchObject({ by: 'pitch' })
    const caution = result.cautions.find(text => text.startsWith(`${name} (ISO 228-1), a parallel pipe thread`))
    expect(caution).toContain(told)
    expect(caution).toMatch(/alike at both ends.*flanks of 55°/)
  })
})

it.each([
  [11.6, 1.337, 'G 1/4'],
  [8.7, 0.907, 'G 1/8']
])('a hole of %d mm with a pitch of %d mm is the answer where no thread of the series has them', (measuredMm, pitchMm, name) => {
  expect(identify({ measuredMm, side: 'internal', pitchMm, candidates })).toMatchObject({
    ranked: [{ candidate: { name: `${name} (ISO 228-1)` }, verdict: 'fits' }]
  })
})
