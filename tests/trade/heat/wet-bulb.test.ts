// Example: the psychrometer formula by hand; ranges.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { bulbVapourPressurePa, depressionK, icedVapourPressurePa } from '../../../src/trade/heat/wet-bulb.ts'

describe('by hand', () => {
  // 2332.596 - 0.000653·(1 + 0.000944·20)·101325·20 = 2332.596 - 1323.3045·1.01888
  it('water on the bulb', () => {
    const at = { waterSaturationPa: 2332.596, wetBulbC: 20, pressurePa: 101325, depressionK: 20 }
    expect(bulbVapourPressurePa(at)).toBeCloseTo(984.308, 2)
  })
  // 400 - 0.000575·101325·2
  it('ice on the bulb', () => {
    expect(icedVapourPressurePa({ iceSaturationPa: 400, pressurePa: 101325, depressionK: 2 })).toBeCloseTo(283.476, 3)
  })
  it('depression', () => {
    expect(depressionK({ airC: 4.5, wetBulbC: -1 })).toBe(5.5)
  })
})

it.each([-0.001, 60.001])('refuses a depression of %d K', depression => {
  expect(() => icedVapourPressurePa({ iceSaturationPa: 400, pressurePa: 101325, depressionK: depression })).toThrow(OutsideRange)
})
