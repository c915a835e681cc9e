// Example: power against cold moving and hot still air (invented inputs, hand arithmetic); property: the window shuts in words.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { type PowerWindow, powerWindow, requireFixedPower } from '../../../src/trade/heat/power-window.ts'

const window: Plain<PowerWindow> = {
  areaM2: 0.04,
  altitudeM: 0,
  cold: { targetC: 5, airC: -20, film: { by: 'value', filmWPerM2K: 30 }, busV: 11 },
  hot: { limitC: 105, airC: 45, film: { by: 'value', filmWPerM2K: 10 }, busV: 15 },
  ratedV: 12
}

describe('rated power', () => {
  it('30·0.04·25 W at 11 V and 10·0.04·60 W at 15 V, turned to 12 V', () => {
    const { leastPowerW, greatestPowerW, spanW } = powerWindow(window)
    expect(leastPowerW).toBeCloseTo(30 * (12 / 11) ** 2, 9)
    expect(greatestPowerW).toBeCloseTo(24 * (12 / 15) ** 2, 9)
    expect(spanW).toBeCloseTo(greatestPowerW - leastPowerW, 12)
  })
  it('is shut here: a thermostat or an interlock is needed', () => {
    expect(() => requireFixedPower(powerWindow(window))).toThrow(NoAnswer)
    expect(() => requireFixedPower(powerWindow(window))).toThrow(
      /no fixed power meets both: .* 35\.7 W .* 15\.4 W .* thermostat or an airflow interlock/
    )
  })
  it('is open with a steadier bus, warmer cold and a hotter limit', () => {
    const open = { ...window, cold: { ...window.cold, airC: 0, busV: 12 }, hot: { ...window.hot, limitC: 120, busV: 12 } }
    expect(() => requireFixedPower(powerWindow(open))).not.toThrow()
  })
  it('films by correlation are taken at target and limit', () => {
    const by = powerWindow({
      ...window,
      cold: { ...window.cold, film: { by: 'churchill-bernstein', airflowMPerS: 10, sizeMm: 60 } },
      hot: { ...window.hot, film: { by: 'horizontal-cylinder', sizeMm: 60 } }
    })
    expect(by.leastPowerW).toBeGreaterThan(0)
    expect(by.greatestPowerW).toBeGreaterThan(0)
  })
  it('a wider span of the bus never opens the window', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2, noNaN: true }), wider => {
        const spread = { ...window, cold: { ...window.cold, busV: 11 - wider }, hot: { ...window.hot, busV: 15 + wider } }
        expect(powerWindow(spread).spanW).toBeLessThanOrEqual(powerWindow(window).spanW)
      })
    )
  })
})
