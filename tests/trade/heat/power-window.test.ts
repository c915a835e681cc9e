// Example: power against cold moving and hot still air (invented inputs, hand arithmetic); property: a wider bus never opens the window.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type PowerWindow, powerWindow } from '../../../src/trade/heat/power-window.ts'

const surface = (filmWPerM2K: number) =>
  ({ by: 'surface', areaM2: 0.04, film: { by: 'value', filmWPerM2K }, emissivityRatio: null, machineWPerK: null }) as const
const around = (airC: number) => ({ airC, machineC: airC, altitudeM: 0 })
const window: PowerWindow = {
  cold: { targetC: 5, around: around(-20), loss: surface(30), busV: 11 },
  hot: { limitC: 105, around: around(45), loss: surface(10), busV: 15 },
  ratedV: 12,
  ratingRatios: [1, 1],
  follows: null,
  jointKPerW: 0
}

describe('rated power', () => {
  it('30·0.04·25 W at 11 V and 10·0.04·60 W at 15 V, turned to 12 V', () => {
    const { leastPowerW, greatestPowerW, spanW } = powerWindow(window)
    expect(leastPowerW).toBeCloseTo(30 * (12 / 11) ** 2, 9)
    expect(greatestPowerW).toBeCloseTo(24 * (12 / 15) ** 2, 9)
    expect(spanW).toBeCloseTo(greatestPowerW - leastPowerW, 12)
  })
  it('what gives 5 % less or more than it is rated for must be rated higher in the cold and lower in the heat', () => {
    const { leastPowerW, greatestPowerW } = powerWindow({ ...window, ratingRatios: [0.95, 1.05] })
    expect(leastPowerW).toBeCloseTo((30 * (12 / 11) ** 2) / 0.95, 9)
    expect(greatestPowerW).toBeCloseTo((24 * (12 / 15) ** 2) / 1.05, 9)
  })
  it('by a loss from a heat test: 1.2·25 W and 0.4·60 W', () => {
    const tested = {
      ...window,
      cold: { ...window.cold, loss: { by: 'test', lossWPerK: 1.2 } },
      hot: { ...window.hot, loss: { by: 'test', lossWPerK: 0.4 } }
    } as const
    expect(powerWindow(tested)).toEqual(powerWindow(window))
  })
  it('a machine behind it as cold as the air asks for more: 0.5 W/K more', () => {
    const bolted = { ...window, cold: { ...window.cold, loss: { ...surface(30), machineWPerK: 0.5 } } }
    expect(powerWindow(bolted).leastPowerW).toBeCloseTo(42.5 * (12 / 11) ** 2, 9)
  })
  it('a resistance that follows the part: 4 K above the casting by 0.4 K/W at 10 W, and rated at 120 °C', () => {
    const cold = { ...window.cold, loss: surface(10) }
    const follows = { resistanceChangePerK: 0.4, hotC: 120 }
    const { leastPowerW, greatestPowerW } = powerWindow({ ...window, cold, follows, jointKPerW: 0.4 })
    expect(leastPowerW).toBeCloseTo((10 * (12 / 11) ** 2 * (1 + 0.004 * (9 - 20))) / 1.4, 9)
    // The part stands at the limit: 60 K over the air behind 0.4 K/W to the casting and 1/0.4 K/W from there.
    const limitW = 60 / (0.4 + 1 / 0.4)
    expect(greatestPowerW).toBeCloseTo((limitW * (12 / 15) ** 2 * (1 + 0.004 * (105 - 20))) / 1.4, 9)
  })
  it('a target that the air alone holds asks for no power, whatever the resistance does', () => {
    const cold = { ...window.cold, targetC: -25 }
    expect(powerWindow({ ...window, cold }).leastPowerW).toBe(0)
    expect(powerWindow({ ...window, cold, follows: { resistanceChangePerK: 0.4, hotC: 120 } }).leastPowerW).toBe(0)
  })
  it('a limit below the hottest air allows less than nothing', () => {
    const hot = { ...window.hot, limitC: 40 }
    expect(powerWindow({ ...window, hot, jointKPerW: 0.4 }).greatestPowerW).toBeCloseTo(-2 * (12 / 15) ** 2, 9)
  })
  it('films by correlation are taken at target and limit', () => {
    const blown = { ...surface(1), film: { by: 'churchill-bernstein', airflowMPerS: 10, sizeMm: 60 } } as const
    const standing = { ...surface(1), film: { by: 'horizontal-cylinder', sizeMm: 60 } } as const
    const by = powerWindow({ ...window, cold: { ...window.cold, loss: blown }, hot: { ...window.hot, loss: standing } })
    const hotter = powerWindow({ ...window, hot: { ...window.hot, limitC: 125, loss: standing } })
    expect(by.leastPowerW).toBeGreaterThan(0)
    // The film of still air grows with the gap: 80 K over 60 K is more than a third more.
    expect(hotter.greatestPowerW / by.greatestPowerW).toBeGreaterThan(80 / 60)
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
