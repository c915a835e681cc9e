// property: laws of a battery and of a budget.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { endurance, type SupplyGiven, supply } from '../../../src/trade/supply/supply.ts'

const BATTERY = { capacityAh: 100, rateS: 72_000, peukertFactor: 1.2, coldPercent: 100 }

describe('endurance', () => {
  it('is the rated time at the rated current, whatever the exponent', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2, noNaN: true }), peukertFactor => {
        expect(endurance({ ...BATTERY, peukertFactor }, 5).enduranceS).toBeCloseTo(72_000, 6)
      })
    )
  })

  it('is linear without the exponent: charge over current', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), currentA => {
        const { enduranceS, deliveredPercent } = endurance({ ...BATTERY, peukertFactor: 1 }, currentA)
        expect((enduranceS * currentA) / 360_000).toBeCloseTo(1, 9)
        expect(deliveredPercent).toBeCloseTo(100, 9)
      })
    )
  })

  it('delivers in its time what it says it delivers', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 1, max: 1.6, noNaN: true }),
        (currentA, peukertFactor) => {
          const { enduranceS, deliveredPercent, capacityAh } = endurance({ ...BATTERY, peukertFactor }, currentA)
          expect((enduranceS * currentA) / 3600 / capacityAh / (deliveredPercent / 100)).toBeCloseTo(1, 9)
        }
      )
    )
  })

  it('gives no more than its label, however small the current', () => {
    // 100 Ah at its 20 h rate are 5 A: at 2 A they last 50 h, and not what the law would say.
    expect(endurance(BATTERY, 2)).toMatchObject({ enduranceS: 50 * 3600, deliveredPercent: 100 })
    expect(endurance(BATTERY, 4.9999).enduranceS).toBeCloseTo(endurance(BATTERY, 5).enduranceS, -1)
  })

  it('takes the cold off before the rate', () => {
    // 60 Ah are left, 3 A is their 20 h rate: 6 A lasts 20/2^1.2 h.
    const { capacityAh, enduranceS } = endurance({ ...BATTERY, coldPercent: 60 }, 6)
    expect(capacityAh).toBe(60)
    expect(enduranceS / 3600).toBeCloseTo(20 / 2 ** 1.2, 9)
  })

  it.each([
    ['no current', { ...BATTERY }, 0],
    ['an exponent below 1', { ...BATTERY, peukertFactor: 0.99 }, 5]
  ])('refuses %s', (_, battery, currentA) => {
    expect(() => endurance(battery, currentA)).toThrow(OutsideRange)
  })
})

/** Invented. */
const JOB: SupplyGiven = {
  outputA: new Given(16, { low: 15, high: 17 }),
  loads: [
    { name: 'lamps', currentA: new Given(8), dutyPercent: new Given(100), priority: 'essential' },
    { name: 'heater', currentA: new Given(10), dutyPercent: new Given(50, { low: 40, high: 60 }), priority: 'useful' }
  ],
  battery: { capacityAh: new Given(26), rateS: new Given(72_000), peukertFactor: new Given(1), coldPercent: new Given(100) }
}

describe('supply', () => {
  it('sums loads by duty and leaves a margin with bounds', () => {
    const found = boundsOf(JOB, supply)
    expect(found.loadA).toMatchObject({ value: 13, low: 12, high: 14 })
    expect(found.marginA).toMatchObject({ value: 3, low: 1, high: 5 })
    expect(found.loadPercent!.value).toBe(81.25)
    expect(found.battery!.enduranceS.value).toBe(7200)
  })

  it('lasts without end where nothing is drawn, and so for any current however small', () => {
    const idle = { ...plainOf(JOB).plain, loads: [] }
    expect(supply(idle).battery).toEqual({ capacityAh: 26, enduranceS: Number.POSITIVE_INFINITY, deliveredPercent: 100 })
    const loads = [{ name: 'clock', currentA: 0.005, dutyPercent: 100, priority: 'useful' as const }]
    // 26 Ah over 5 mA.
    expect(supply({ ...idle, loads }).battery!.enduranceS / 3600).toBeCloseTo(5200, 9)
  })

  it('leaves out what was not given', () => {
    const plain: Plain<SupplyGiven> = { outputA: 0, loads: [], battery: null }
    expect(supply(plain)).toEqual({ outputA: 0, loadA: 0, marginA: 0, loadPercent: null, battery: null })
  })
})
