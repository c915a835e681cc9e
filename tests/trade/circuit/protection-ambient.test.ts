// example: each side of the printed temperatures.
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { allowedLoadA, coldRatingA, loadRow } from '../../../src/trade/circuit/protection-ambient.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const percent = (style: 'blade' | 'blade-large' | 'thermal', ratingA: number, ambientC: number) =>
  loadRow(styleOf(style), { ratingA, ambientC })?.loadPercent

it('reads at the next higher printed temperature', () => {
  expect(percent('blade', 10, 25)).toBe(75)
  expect(percent('blade', 10, 25.1)).toBe(60) // 75 · 8/10
  expect(percent('blade', 10, 65)).toBe(60)
  expect(percent('blade', 10, 65.1)).toBeUndefined()
  expect(percent('blade-large', 40, 66)).toBeCloseTo((75 * 25) / 40, 9)
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
