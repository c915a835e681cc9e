// table: one published figure for a formula of sources and loads that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import * as constant from '../../src/trade/circuit/constant-power.ts'
import { powerW, resistanceOhm } from '../../src/trade/circuit/load.ts'
import { allowedLoadA, loadRow } from '../../src/trade/circuit/protection-ambient.ts'
import { styleOf } from '../../src/trade/circuit/protection-styles.ts'
import { ratedSharePercent } from '../../src/trade/circuit/rating-share.ts'
import { shortA } from '../../src/trade/circuit/wire-short.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: Kuphaldt, Lessons In Electric Circuits vol. I ch. 10: 28 V behind 4 Ω and 7 V behind 1 Ω are 11.2 V behind 0.8 Ω;
// 2 Ω on them take 4 A (read-secondary) at 8 V, 32 W; at most 39.2 W arrive; 0.5 Ω take 37.11 W at 4.308 V, 8.615 A; a short 14 A (memory).
describe('a source and the power that it gives', () => {
  const [busV, loopOhm] = [11.2, 0.8]
  it('at most', () => {
    expect(off(constant.greatestW({ busV, loopOhm }), 39.2)).toBeLessThanOrEqual(0.05)
  })
  it('how much of it 32 W are', () => {
    expect(off(constant.loadingRatio({ busV, loopOhm, powerW: 32 }) * 39.2, 32)).toBeLessThanOrEqual(0.05)
  })
  it('where 32 W settle', () => {
    const point = constant.operatingPoint({ busV, loopOhm, powerW: 32 })
    expect(off(point.upperV, 8)).toBeLessThanOrEqual(0.0005)
    expect(off(point.constantPowerA, 4)).toBeLessThanOrEqual(0.0005)
  })
  // Half a hundredth of a watt is 1.6 mV there, and 2 mA.
  it('where 37.11 W would fit as well', () => {
    const lower = constant.lowerRoot({ busV, loopOhm, powerW: 37.11 })!
    expect(off(lower.lowerV, 4.308)).toBeLessThanOrEqual(0.0021)
    expect(off(lower.lowerA, 8.615)).toBeLessThanOrEqual(0.0026)
  })
  it('a short', () => {
    expect(off(shortA({ busV, loopOhm }), 14)).toBeLessThanOrEqual(0.005)
  })
})

// Source: a heater rated for 12 V gives 1.36 times its power at 14 V (common practice: the square of the voltage).
it('a 12 V heater at 14 V', () => {
  const rated = { ratedV: 12, powerW: 60 }
  const place = powerW({ atV: 14, resistanceOhm: resistanceOhm(rated) })
  expect(off(ratedSharePercent({ powerW: place, ratedW: rated.powerW }), 136)).toBeLessThanOrEqual(0.5)
})

// Source: a fuse maker's guide, three quarters of the rating at 25 °C (read-secondary), and its example: 7.5 A on a 10 A fuse (memory).
it('the load of a 10 A fuse', () => {
  const row = loadRow(styleOf('blade'), { ratingA: 10, ambientC: 25 })!
  expect(off(allowedLoadA({ ratingA: 10, sharePercent: row.loadPercent }), 7.5)).toBeLessThanOrEqual(0.05)
})
