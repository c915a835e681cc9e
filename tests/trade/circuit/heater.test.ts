// property: what holds of any heater
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { heater } from '../../../src/trade/circuit/heater.ts'

const powerW = fc.double({ min: 1, max: 500, noNaN: true })
const volts = fc.double({ min: 1, max: 60, noNaN: true })
const count = fc.integer({ min: 1, max: 12 })
const unknown = { by: 'unknown' } as const

it('takes its rated power at its rated voltage', () => {
  fc.assert(
    fc.property(powerW, volts, (watts, ratedV) => {
      const { each } = heater({ powerW: watts, ratedV, atV: ratedV, count: 1, cold: unknown })
      expect(each.powerW / watts).toBeCloseTo(1, 12)
      expect((each.currentA * ratedV) / watts).toBeCloseTo(1, 12)
    })
  )
})

it('gives power with the square of the voltage', () => {
  fc.assert(
    fc.property(powerW, volts, volts, (watts, ratedV, atV) => {
      const { togetherW } = heater({ powerW: watts, ratedV, atV, count: 1, cold: unknown })
      expect(togetherW / (watts * (atV / ratedV) ** 2)).toBeCloseTo(1, 12)
    })
  )
})

it('several in parallel take so many times one, through so much less resistance', () => {
  fc.assert(
    fc.property(powerW, volts, volts, count, (watts, ratedV, atV, n) => {
      const all = heater({ powerW: watts, ratedV, atV, count: n, cold: { by: 'coefficient', resistanceChangePerK: 0.4, hotC: 300 } })
      const one = heater({ powerW: watts, ratedV, atV, count: 1, cold: { by: 'coefficient', resistanceChangePerK: 0.4, hotC: 300 } })
      for (const name of ['togetherA', 'togetherW', 'coldA'] as const) expect(all[name]! / one[name]!).toBeCloseTo(n, 9)
      expect(one.togetherOhm / all.togetherOhm).toBeCloseTo(n, 9)
      expect(all.each).toEqual(one.each)
      expect((all.togetherA * all.togetherOhm) / atV).toBeCloseTo(1, 12)
    })
  )
})

it('a heater that is switched on hot at 20 °C takes its steady current', () => {
  const { coldA, togetherA } = heater({
    powerW: 45,
    ratedV: 12,
    atV: 14,
    count: 2,
    cold: { by: 'coefficient', resistanceChangePerK: 0.4, hotC: 20 }
  })
  expect(coldA).toBeCloseTo(togetherA, 12)
})

it('says nothing of the cold where nothing is known of it', () => {
  expect(heater({ powerW: 45, ratedV: 12, atV: 12, count: 1, cold: unknown }).coldA).toBeUndefined()
})

it('without voltage nothing flows', () => {
  expect(heater({ powerW: 45, ratedV: 12, atV: 0, count: 1, cold: { by: 'multiple', coldFactor: 3 } })).toMatchObject({
    togetherA: 0,
    togetherW: 0,
    coldA: 0
  })
})

it('what a meter reads cold lets the current of the first instant through', () => {
  const coldOnes = [
    { by: 'multiple', coldFactor: 2.5 },
    { by: 'coefficient', resistanceChangePerK: 0.4, hotC: 300 }
  ] as const
  fc.assert(
    fc.property(powerW, volts, volts, count, (watts, ratedV, atV, n) => {
      for (const cold of coldOnes) {
        const { coldA, meterOhm } = heater({ powerW: watts, ratedV, atV, count: n, cold })
        expect((coldA! * meterOhm!) / atV).toBeCloseTo(1, 9)
      }
    })
  )
  expect(heater({ powerW: 45, ratedV: 12, atV: 12, count: 1, cold: unknown }).meterOhm).toBeUndefined()
})
