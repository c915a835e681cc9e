// table: each side of the printed temperatures (rows of tests/outside/rows/protection.ts).
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { allowedLoad, allowedLoadA, coldRatingA, loadRow } from '../../../src/trade/circuit/protection-ambient.ts'
import type { StyleId } from '../../../src/trade/circuit/protection-style.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const percent = (style: StyleId, ratingA: number, ambientC: number) => loadRow(styleOf(style), { ratingA, ambientC })?.loadPercent

it('reads at the next higher printed temperature', () => {
  expect(percent('blade', 10, 25)).toBe(75)
  expect(percent('blade', 10, 25.1)).toBe(60) // 75 · 8/10
  expect(percent('blade', 10, 65)).toBe(60)
  expect(percent('blade', 10, 65.1)).toBeUndefined()
  expect(percent('blade-large', 40, 66)).toBeCloseTo((75 * 25) / 40, 9)
})

it.each([
  ['iec-60898', 30, 80, undefined],
  ['hydraulic-magnetic', 25, 80, undefined],
  ['thermal-magnetic', 40, 80, 78], // 80 · 0.975
  ['thermal-magnetic', 45, 78, 74], // 80 · 0.925
  ['blade-large', 65, 63.75, 46.875], // 75 · 34/40 and 75 · 25/40
  ['glass', 25, 75, 65],
  ['glass', 85, 65, undefined]
] as const)('%s at %d °C may be loaded to %d %, hotter to %d %', (style, ambientC, at, hotter) => {
  expect(percent(style, 40, ambientC)).toBeCloseTo(at, 9)
  const above = percent(style, 40, ambientC + 0.1)
  expect(above).toEqual(hotter === undefined ? undefined : expect.closeTo(hotter, 9))
})

it('takes the harder of the two printed re-ratings for a rating without one', () => {
  expect(percent('blade', 15, 40)).toBe(57) // 75 · 19/25
})

it('loads a thermal breaker less in the heat and finds it holding more in the cold', () => {
  expect(percent('thermal', 10, 41)).toBeCloseTo(80 / 1.24, 9)
  expect(coldRatingA(styleOf('thermal'), { ratingA: 10, ambientC: -5 })).toBeCloseTo(10 / 0.84, 9)
  expect(() => coldRatingA(styleOf('thermal'), { ratingA: 10, ambientC: -31 })).toThrow(OutsideRange)
  expect(coldRatingA(styleOf('blade'), { ratingA: 10, ambientC: -40 })).toBe(10)
})

it('is a share of the rating', () => {
  expect(allowedLoadA({ ratingA: 20, sharePercent: 75 })).toBe(15)
})

it('tells at which printed temperature it read', () => {
  const { working } = withWorking(() => percent('blade', 10, 30))
  expect(working).toMatchObject([{ symbol: 'p', value: 60, putIn: 'read at 65 °C', says: 'share of the rating that may be used' }])
  expect(withWorking(() => percent('blade', 10, 70)).working).toEqual([])
})

it.each([
  [-30, 10 / 0.76],
  [-29.9, 10 / 0.76]
])('a thermal breaker of 10 A at %d °C is read at the row below', (ambientC, heldA) => {
  expect(coldRatingA(styleOf('thermal'), { ratingA: 10, ambientC })).toBeCloseTo(heldA, 9)
})

it.each([
  [24, 7.5, 25, 7.5, 25],
  [25, 7.5, 25, 7.5, 25],
  [25.1, 6, 65, 7.5, 25],
  [65, 6, 65, 6, 65]
])('a blade fuse of 10 A at %d °C may carry %d A, read at %d °C; by the row below %d A, read at %d °C', (ambientC, ...found) => {
  const [allowedA, readC, coolerA, coolerC] = found
  expect(allowedLoad(styleOf('blade'), { ratingA: 10, ambientC })).toEqual({ allowedA, readC, coolerA, coolerC })
})

it('of a row for one rating alone the others take theirs', () => {
  // 75 · 19/25 of 5 A
  expect(allowedLoad(styleOf('blade'), { ratingA: 5, ambientC: 26 })).toMatchObject({ allowedA: expect.closeTo(2.85, 9), coolerA: 3.75 })
})

it('above the hottest row nothing is printed, and it is no more than that row has', () => {
  expect(allowedLoad(styleOf('blade'), { ratingA: 10, ambientC: 66 })).toEqual({ allowedA: null, readC: null, coolerA: 6, coolerC: 65 })
})
