// table: a heater against makers' figures (rows/heater.ts) and figures worked by hand
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { heater } from '../../src/trade/circuit/heater.ts'
import { CERAMIC, COLD_TO_HOT, RESISTANCE_FACTORS, WATTAGE_TOLERANCE } from './rows/heater.ts'

const ONE = { powerW: 45, ratedV: 12, atV: 12, count: 1 }

function cold(hotC: number, factor: number): number {
  const resistanceChangePerK = (100 * (factor - 1)) / (hotC - 20)
  const { coldA, togetherA } = heater({ ...ONE, cold: { by: 'coefficient', resistanceChangePerK, hotC } })
  return coldA! / togetherA
}

describe('switch-on', () => {
  // The mean coefficient from 20 °C to the row's temperature must give the row's own factor back.
  it.each(RESISTANCE_FACTORS)('$id $alloy from $hotC °C to 20 °C: $printed times the current', ({ hotC, printed }) => {
    expect(Math.abs(cold(hotC, Number(printed)) - Number(printed))).toBeLessThanOrEqual(0.0005)
  })

  it(`${COLD_TO_HOT.id} nickel-chromium takes about ${COLD_TO_HOT.percent} % more power cold`, () => {
    const factor = RESISTANCE_FACTORS.find(row => row.alloy === 'Cr20Ni80' && row.hotC === 300)!
    expect(Math.round(100 * (cold(300, Number(factor.printed)) - 1))).toBe(COLD_TO_HOT.percent)
  })

  it.each([2, 3])(`${CERAMIC.id} a ceramic element at %d times the steady current`, coldFactor => {
    const { coldA, togetherA } = heater({ ...ONE, cold: { by: 'multiple', coldFactor } })
    expect(coldA! / togetherA).toBeCloseTo(coldFactor, 12)
  })
})

describe('resistance', () => {
  it(`${WATTAGE_TOLERANCE.id} wattage +5/-10 % is resistance about -5/+11 %`, () => {
    const tree = {
      powerW: new Given(100, { low: 90, high: 105 }),
      ratedV: new Given(24),
      atV: new Given(24),
      count: 1,
      cold: { by: 'unknown' as const }
    }
    const { value, low, high } = boundsOf(tree, heater).togetherOhm
    expect(Math.round(100 * (low / value - 1))).toBe(-5)
    expect(Math.round(100 * (high / value - 1))).toBe(11)
  })

  // Notes on heaters (arithmetic, memory): a 12 V rating gives 1.36 times its power at 14 V.
  it('a 12 V rating gives 1.36 times at 14 V', () => {
    const { togetherW } = heater({ ...ONE, atV: 14, cold: { by: 'unknown' } })
    expect(Math.abs(togetherW / ONE.powerW - 1.36)).toBeLessThanOrEqual(0.005)
  })

  // 72 W at 24 V is 8.00 ohm: scenario of a 24 V truck (invented data, hand arithmetic).
  it('72 W at 24 V is 8.00 ohm', () => {
    const { each } = heater({ powerW: 72, ratedV: 24, atV: 24, count: 1, cold: { by: 'unknown' } })
    expect(Math.abs(each.resistanceOhm - 8)).toBeLessThanOrEqual(0.005)
  })
})
