// property: laws of the heat in a wire.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { heatingRatio, wireSteadyC } from '../../../src/trade/circuit/heat-balance.ts'
import { leastAreaMm2 } from '../../../src/trade/circuit/short-heating.ts'
import { overloadHeating, wireTimeS } from '../../../src/trade/circuit/short-heating-end.ts'
import { shortTimeLimitC } from '../../../src/trade/circuit/short-heating-material.ts'

/** Invented: 1.5 mm² of copper to the last strand, 20 A at 105 °C in 30 °C. */
const wire = { areaMm2: 1.5, resistanceOhmPerM: 0.017241 / 1.5, ampacityA: 20, ratedC: 105, ambientC: 30 }
const heated = (currentA: number, timeS: number, startC = 30) => overloadHeating({ wire, currentA, startC, timeS, limitC: 160 })

describe('a wire under overload', () => {
  it('settles at its rated temperature at its continuous current, whatever the wire', () => {
    fc.assert(
      fc.property(fc.double({ min: 60, max: 200, noNaN: true }), fc.double({ min: -40, max: 50, noNaN: true }), (ratedC, ambientC) => {
        const u = heatingRatio({ currentA: 20, ampacityA: 20, riseK: ratedC - ambientC, ratedC })
        expect(wireSteadyC({ ambientC, heatingRatio: u })).toBeCloseTo(ratedC, 8)
      })
    )
    expect(heated(20, Number.POSITIVE_INFINITY)).toMatchObject({ method: 'settled' })
    expect(heated(20, Number.POSITIVE_INFINITY).endC).toBeCloseTo(105, 8)
  })

  it('is never cooler with all heat kept than with losses', () => {
    fc.assert(
      fc.property(fc.double({ min: 21, max: 400, noNaN: true }), currentA => {
        const [kept, lossy] = [heated(currentA, 5), heated(currentA, 5 + 1e-9)]
        expect([kept.method, lossy.method]).toEqual(['all heat kept', 'heat balance'])
        expect(kept.endC).toBeGreaterThanOrEqual(0.99 * lossy.endC)
      })
    )
  })

  it('comes to the short-time formula as the time shrinks beside the time constant', () => {
    // IEC 60364-5-54 (read-secondary), copper: (226·1.5/300)²·ln((234.5 + T)/264.5) solved for 160 °C.
    const keptS = ((226 * 1.5) / 300) ** 2 * Math.log((234.5 + 160) / 264.5)
    expect(wireTimeS({ wire, currentA: 300, startC: 30, limitC: 160 }) / keptS).toBeCloseTo(1, 2)
    expect(heated(300, keptS).endC).toBeCloseTo(160, 6)
    expect(leastAreaMm2({ currentA: 300, timeS: keptS, withstandARootSPerMm2: 226 * Math.sqrt(Math.log(394.5 / 264.5)) })).toBeCloseTo(
      1.5,
      9
    )
  })

  it('gets hotter with time and with current', () => {
    fc.assert(
      fc.property(fc.double({ min: 25, max: 200, noNaN: true }), fc.double({ min: 6, max: 3000, noNaN: true }), (currentA, timeS) => {
        expect(heated(currentA, timeS * 1.1).endC).toBeGreaterThanOrEqual(heated(currentA, timeS).endC - 1e-9)
        expect(heated(currentA * 1.1, timeS).endC).toBeGreaterThanOrEqual(heated(currentA, timeS).endC - 1e-9)
      })
    )
  })

  it('takes the time to a temperature that brings it there', () => {
    fc.assert(
      fc.property(fc.double({ min: 35, max: 60, noNaN: true }), currentA => {
        const timeS = wireTimeS({ wire, currentA, startC: 30, limitC: 160 })
        expect(heated(currentA, timeS).endC).toBeCloseTo(160, 6)
      })
    )
  })

  it('never reaches a temperature above where it settles, and is there at once if it starts there', () => {
    expect(wireTimeS({ wire, currentA: 20, startC: 30, limitC: 105.1 })).toBe(Number.POSITIVE_INFINITY)
    expect(Number.isFinite(wireTimeS({ wire, currentA: 20, startC: 30, limitC: 104.9 }))).toBe(true)
    expect(wireTimeS({ wire, currentA: 20, startC: 30, limitC: 30 })).toBe(0)
  })

  it('finds no steady state at several times its current and melts', () => {
    expect(heated(60, Number.POSITIVE_INFINITY).endC).toBe(1083)
    expect(heated(60, 1e6).endC).toBe(1083)
    expect(heated(5000, 5).endC).toBe(1083)
  })

  it('keeps the margin to the limit', () => {
    const { endC, marginK } = heated(20, Number.POSITIVE_INFINITY)
    expect(marginK).toBeCloseTo(160 - endC, 9)
  })
})

it('keeps the short-time formula to 5 s', () => {
  expect(() => leastAreaMm2({ currentA: 100, timeS: 5.001, withstandARootSPerMm2: 115 })).toThrow(OutsideRange)
  expect(leastAreaMm2({ currentA: 100, timeS: 5, withstandARootSPerMm2: 115 })).toBeGreaterThan(0)
})

it('takes the lowest printed limit for an insulation without one', () => {
  expect(shortTimeLimitC({ kind: 'unknown', insulationC: 105 })).toBe(160)
  expect(shortTimeLimitC({ kind: 'unknown', insulationC: 200 })).toBe(200)
  expect(shortTimeLimitC({ kind: 'xlpe', insulationC: 90 })).toBe(250)
  expect(shortTimeLimitC({ kind: 'pvc', insulationC: 70 })).toBe(160)
})
