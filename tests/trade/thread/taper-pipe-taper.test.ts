// table: which tapers are a pipe thread's, on both sides of each end; by hand: 1/16 is 0.0625, and a quarter less and more 0.046875 and 0.078125
import { expect, it } from 'vitest'
import { taperKind, taperRatio } from '../../../src/trade/thread/taper-pipe-taper.ts'

it.each([
  [0.0199, 'parallel'],
  [0.0201, 'other'],
  [0.0468, 'other'],
  [0.047, 'pipe'],
  [0.078, 'pipe'],
  [0.0782, 'other']
] as const)('%d: %s, whichever end is the larger', (ratio, kind) => {
  expect([taperKind(ratio), taperKind(-ratio)]).toEqual([kind, kind])
})

it('is measured as what the diameter loses over a length: 0.5 mm over 8', () => {
  expect(taperRatio({ largeMm: 13, smallMm: 12.5, betweenMm: 8 })).toBe(1 / 16)
})
