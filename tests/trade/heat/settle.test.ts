// Example: a loss that grows is met where it equals the power.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { crossing, settledC } from '../../../src/trade/heat/settle.ts'

describe('where heat in and out are equal', () => {
  const lostW = (surfaceC: number) => 0.5 * surfaceC
  it('finds it', () => {
    expect(settledC({ powerW: 20, lostW, coldestC: 0, hottestC: 100 })).toBeCloseTo(40, 12)
  })
  it('refuses what lies hotter than the loss is known for, and says about where it would be', () => {
    expect(() => settledC({ powerW: 60, lostW, coldestC: 0, hottestC: 100 })).toThrow(OutsideRange)
    expect(() => settledC({ powerW: 60, lostW, coldestC: 0, hottestC: 100 })).toThrow(expect.objectContaining({ value: 120 }))
  })
})

it('finds a passing through nought to the last digits', () => {
  expect(crossing(x => x ** 3 - 2, 0, 2)).toBeCloseTo(2 ** (1 / 3), 15)
})
