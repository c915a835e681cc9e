// property: slopes are those of the readings; the middle that was measured does not change what was expected before
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { HEALTHY } from '../../../src/trade/proof/fault.ts'
import { gaussianOf, meterVariance, predictorOf } from '../../../src/trade/proof/predictor.ts'
import { faultNamed, GOOD_METER, TWO_POINTS, twoHeaters, volts } from './invented.ts'

const tested = twoHeaters()
const source = tested.network.elements[0] as { readonly sourceV: Given }
/** Made anew for each question: what leaves the circuit as it is, is worked out once. */
const made = () => predictorOf(tested, TWO_POINTS)

it('a slope is what one standard deviation of an input does', () => {
  // The bus moves all volts of a circuit of constant resistance in proportion: 1/√3 V of 12 V.
  const predictor = made()
  const values = predictor.valuesOf(HEALTHY, 0)
  const [first] = predictor.slopesOf(HEALTHY, 0)
  for (const [i, { takes }] of TWO_POINTS.entries())
    if (takes !== 'ohms') expect(first![i]).toBeCloseTo((values[i]! * 1) / Math.sqrt(3) / 12, 7)
})

describe('where the bus was measured', () => {
  const measured = () => predictorOf(tested, TWO_POINTS, new Map([[source.sourceV, 12.6]]))
  const whole = (of: ReturnType<typeof made>) => ({ values: of.valuesOf(HEALTHY, 0), slopes: of.slopesOf(HEALTHY, 0) })

  it('readings are worked out there', () => {
    expect(whole(measured()).values[0]! / whole(made()).values[0]!).toBeCloseTo(12.6 / 12, 9)
  })

  it('and what was expected before any reading stays', () => {
    const [there, here] = [measured(), made()].map(one => one.settled(whole(one)))
    for (const [i, value] of here!.entries()) expect(Math.abs(there![i]! - value)).toBeLessThan(2e-3 * Math.max(1e-3, Math.abs(value)))
  })
})

it('the meter adds to what the inputs spread', () => {
  const point = volts('bus', 'chassis')
  // 0.5 % of 12 V and 2 steps of 1 mV: 0.062 V, over √3.
  expect(meterVariance(point, 12)).toBeCloseTo((0.062 / Math.sqrt(3)) ** 2, 12)
  const one = predictorOf(tested, [point])
  const whole = { values: one.valuesOf(HEALTHY, 0), slopes: one.slopesOf(HEALTHY, 0) }
  const inputs = whole.slopes.reduce((sum, [slope]) => sum + slope! ** 2, 0)
  const spread = Math.sqrt(inputs + meterVariance(point, whole.values[0]!))
  expect(gaussianOf(one, whole).distance([whole.values[0]! + 2 * spread])).toBeCloseTo(4, 6)
})

it('of a source told to lie between 11 and 13 V each end is a twentieth of a volt off, of what has one voltage nothing is told', () => {
  // A deviation of what lies between them is 1/√3 V.
  expect(made().told).toEqual([{ row: 0, roundingDeviations: expect.closeTo(0.05 * Math.sqrt(3), 12) }])
  const elements = tested.network.elements.map(one => (one.kind === 'source' ? { ...one, sourceV: new Given(12) } : one))
  const exact = { ...tested, network: { ...tested.network, elements } }
  expect(predictorOf(exact, TWO_POINTS).told).toEqual([])
})

it('a better meter never widens what is expected', () => {
  const better = predictorOf(tested, [volts('bus', 'tee', { ...GOOD_METER, accuracyPercent: 0.1 })])
  const worse = predictorOf(tested, [volts('bus', 'tee')])
  const whole = { values: worse.valuesOf(HEALTHY, 0), slopes: worse.slopesOf(HEALTHY, 0) }
  expect(gaussianOf(better, whole).distance([0.2])).toBeGreaterThanOrEqual(gaussianOf(worse, whole).distance([0.2]))
})

it('a fault is put in for the call alone', () => {
  const predictor = made()
  const before = predictor.valuesOf(HEALTHY, 0)
  predictor.valuesOf(faultNamed('open@bus to tee'), 0)
  predictor.slopesOf(faultNamed('short@left'), 0.1)
  expect(predictor.valuesOf(HEALTHY, 0)).toEqual(before)
})

describe('drawn to a reading of the bus', () => {
  const bus = () => predictorOf(tested, [volts('bus', 'chassis')])
  const drawnTo = (volts: number) => {
    const whole = { values: bus().valuesOf(HEALTHY, 0), slopes: bus().slopesOf(HEALTHY, 0) }
    return bus().drawnTo(whole, [volts]).valuesOf(HEALTHY, 0)[0]!
  }

  // The meter is sixteen times as sharp as the bounds of the source: 1/√3 V beside 0.062/√3 V.
  it.each([11.4, 12.5])('of %d V it shows as much', volts => {
    expect(Math.abs(drawnTo(volts) - volts)).toBeLessThan(0.01)
  })

  // Behind 0.01 ohm at some 4.8 A: 0.4 % of the voltage.
  it('the source stays in its bounds of 11 to 13 V', () => {
    expect(drawnTo(20)).toBeCloseTo(13 * (1 - 0.004), 1)
    expect(drawnTo(2)).toBeCloseTo(11 * (1 - 0.004), 1)
  })
})
