// Property: laws of moist air; example: ranges, and bounds that cross freezing.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { type Dew, dew, overIce } from '../../../src/trade/heat/dew.ts'

const air = fc.double({ min: -25, max: 50, noNaN: true })
const humidity = fc.double({ min: 20, max: 100, noNaN: true })

function moist(airC: number, humidityPercent: number, surfaceC: number | null = null) {
  return dew({ airC, moisture: { by: 'humidity', humidityPercent }, altitudeM: 0, surfaceC })
}

function wetBulb(airC: number, wetBulbC: number, altitudeM = 0) {
  return dew({ airC, moisture: { by: 'wet-bulb', wetBulbC }, altitudeM, surfaceC: null })
}

describe('laws', () => {
  it('the dew point is never above the air', () => {
    fc.assert(
      fc.property(air, humidity, (airC, percent) => {
        expect(moist(airC, percent).dewPointC).toBeLessThanOrEqual(airC + 1e-9)
      })
    )
  })
  it('saturated air is at its dew point', () => {
    fc.assert(
      fc.property(air, airC => {
        expect(moist(airC, 100).dewPointC).toBeCloseTo(airC, 9)
      })
    )
  })
  it('below 0 °C the frost point stands above the dew point and governs; above, there is none', () => {
    fc.assert(
      fc.property(air, humidity, (airC, percent) => {
        const { dewPointC, frostPointC, governs, pointC } = moist(airC, percent)
        if (dewPointC > 0) expect([frostPointC, governs, pointC]).toEqual([null, 'dew point', dewPointC])
        else {
          expect(frostPointC).toBeGreaterThanOrEqual(dewPointC)
          expect(frostPointC).toBeLessThanOrEqual(0)
          expect([governs, pointC]).toEqual(['frost point', frostPointC])
        }
      })
    )
  })
  it('humidity over ice is more than over water below 0 °C, and not given above', () => {
    fc.assert(
      fc.property(air, humidity, (airC, percent) => {
        const { humidityOverIcePercent } = moist(airC, percent)
        if (airC > 0) expect(humidityOverIcePercent).toBeNull()
        else expect(humidityOverIcePercent).toBeGreaterThanOrEqual(percent - 1e-9)
      })
    )
  })
  it('moister air has a higher dew point and leaves a surface less margin', () => {
    fc.assert(
      fc.property(air, fc.double({ min: 20, max: 95, noNaN: true }), (airC, percent) => {
        const [drier, moister] = [moist(airC, percent, 3), moist(airC, percent + 5, 3)]
        expect(moister.dewPointC).toBeGreaterThan(drier.dewPointC)
        expect(moister.surfaceMarginK).toBeLessThan(drier.surfaceMarginK!)
      })
    )
  })
  it('a wet bulb as warm as the air means saturated air', () => {
    expect(wetBulb(15, 15).humidityPercent).toBeCloseTo(100, 9)
    expect(wetBulb(-8, -8).humidityOverIcePercent).toBeCloseTo(100, 9)
  })
  it('the same wet bulb means moister air where the pressure is lower', () => {
    expect(wetBulb(20, 12, 3000).humidityPercent).toBeGreaterThan(wetBulb(20, 12, 0).humidityPercent)
  })
})

describe('ranges', () => {
  it.each([
    [-45.1, 80],
    [60.1, 80],
    [20, 101],
    [20, 0.1]
  ])('refuses air of %d °C at %d %%', (airC, percent) => {
    expect(() => moist(airC, percent)).toThrow(OutsideRange)
  })
  it.each([
    [-45, 100],
    [60, 100]
  ])('answers at the edge, %d °C at %d %%', (airC, percent) => {
    expect(moist(airC, percent).dewPointC).toBeCloseTo(airC, 6)
  })
  it('refuses a wet bulb above the air, and says so', () => {
    expect(() => wetBulb(20, 21)).toThrow(expect.objectContaining({ found: 'depression is -1 K' }))
  })
  it('refuses a wet bulb too cold for the air', () => {
    expect(() => wetBulb(30, 5)).toThrow(OutsideRange)
  })
})

// WMO-No. 8: e = ew - 0.000653·(1 + 0.000944·tw)·p·Δt over water, e = ei - 0.000575·p·Δt over ice; both saturations are 611.2 Pa at 0 °C.
describe('a bulb about freezing', () => {
  it('carries water from just above 0 °C', () => {
    const overWaterPa = 611.2 * Math.exp((17.62 * 0.005) / (243.12 + 0.005))
    const { vapourPressurePa } = wetBulb(5, 0.005)
    expect(vapourPressurePa).toBeCloseTo(overWaterPa - 0.000653 * (1 + 0.000944 * 0.005) * 101325 * 4.995, 9)
  })
  it('carries ice at 0 °C', () => {
    expect(wetBulb(5, 0).vapourPressurePa).toBeCloseTo(611.2 - 0.000575 * 101325 * 5, 9)
  })
})

describe('bounds that reach just above 0 °C', () => {
  const stands = { frostPoint: 'stands', humidity: 'stands' } as const
  const at = (airC: number, humidityPercent: number) =>
    dew({ airC, moisture: { by: 'humidity', humidityPercent }, altitudeM: 0, surfaceC: null }, stands)
  it('have no frost there', () => {
    expect(at(0.02, 100).frostPointC).toBe(0)
  })
  it('have the humidity of water there', () => {
    expect(at(0.005, 90).humidityOverIcePercent).toBeCloseTo(90, 9)
  })
})

describe('bounds', () => {
  const tree: Dew = {
    airC: new Given(1, { low: -2, high: 4 }),
    moisture: { by: 'humidity', humidityPercent: new Given(90, { low: 80, high: 100 }) },
    altitudeM: new Given(0),
    surfaceC: new Given(2)
  }
  const settled = (given: Dew) => {
    const ice = overIce(plainOf(given).plain)
    return (x: Plain<Dew>) => dew(x, ice)
  }
  it('carry a frost point across freezing, where it stops at 0 °C', () => {
    const { frostPointC, surfaceMarginK, dewPointC } = boundsOf(tree, settled(tree))
    expect(frostPointC!.value).toBeLessThan(0)
    expect(frostPointC!.high).toBe(0)
    // At 4 °C and 100 % the dew point is 4 °C: the surface is 2 K below it.
    expect(dewPointC.high).toBeCloseTo(4, 9)
    expect(surfaceMarginK!.low).toBeCloseTo(-2, 9)
  })
  it('carry a humidity over ice across freezing, where it becomes that over water', () => {
    const cold: Dew = { ...tree, airC: new Given(-1, { low: -3, high: 2 }) }
    const { humidityOverIcePercent } = boundsOf(cold, settled(cold))
    expect(humidityOverIcePercent!.value).toBeGreaterThan(90)
    expect(humidityOverIcePercent!.low).toBeCloseTo(80, 9)
  })
})

describe('bounds of air and wet bulb that overlap', () => {
  const tree: Dew = {
    airC: new Given(4, { low: 2, high: 6 }),
    moisture: { by: 'wet-bulb', wetBulbC: new Given(3, { low: 2.5, high: 3.5 }) },
    altitudeM: new Given(0),
    surfaceC: null
  }
  it('end at saturated air: the dew point gets no higher than the warmest bulb, the humidity no higher than 100 %', () => {
    const ice = overIce(plainOf(tree).plain)
    const { dewPointC, humidityPercent } = boundsOf(tree, x => dew(x, ice))
    expect(dewPointC.high).toBeCloseTo(3.5, 3)
    expect(humidityPercent.high).toBeCloseTo(100, 3)
    expect(dewPointC.low).toBeLessThan(dewPointC.value)
  })
})

it('leaves one line of working a figure', () => {
  const { working } = withWorking(() => moist(4, 78, -6))
  const symbols = working.map(({ symbol }) => symbol)
  expect(symbols).toEqual(['ew', 'p', 'e', 'td', 'm', 'w'])
})

it('tells air that is too dry in its humidity', () => {
  // Magnus at 4 °C: 812.9 Pa (WMO form); 11.17 Pa of it are 1.37 %.
  expect(() => moist(4, 0)).toThrow(expect.objectContaining({ found: 'humidity is 0 %', least: 1.37 }))
})

// 6.112·exp(17.62·(−45)/(243.12 − 45)) = 0.1117 hPa, the least that has a dew point, over 23.33 hPa at 20 °C (WMO-No. 8, read-secondary): 0.479 %.
it('air too dry for a dew point is told by the least humidity that has one', () => {
  const at = (humidityPercent: number) => () =>
    dew(
      { airC: 20, moisture: { by: 'humidity', humidityPercent }, altitudeM: 0, surfaceC: null },
      { frostPoint: 'stands', humidity: 'none' }
    )
  expect(at(0.478)).toThrow(expect.objectContaining({ input: 'humidityPercent', least: 0.479, greatest: 100 }))
  expect(at(0.48)).not.toThrow()
})
