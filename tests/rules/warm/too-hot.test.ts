// table: hottest spot on a hot day against a limit, with a thermostat or without; the numbers are invented
import { describe, expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { tooHot } from '../../../src/rules/warm/too-hot.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const limit = { value: 110, reason: 'card of the seal' }
const alone = (hottestC: ReturnType<typeof sharp>) => ({ hot: { hottestC }, limit, thermostatC: null, heldC: null, hotAirC: null })
/** Off at so many degrees of the casting, nothing hotter than that. */
const off = (thermostatC: number) => ({ thermostatC, heldC: sharp(thermostatC) })

it.each([
  ['below at the worst end', between(60, 109), 'pass'],
  ['above at the worst end', between(60, 111), 'fail'],
  ['just there', sharp(110), 'caution']
])('%s', (_, hottestC, verdict) => {
  expect(verdictOf(tooHot, alone(hottestC))).toBe(verdict)
})

it('gives limit, margin and the reason', () => {
  expect(asked(tooHot, alone(sharp(142)))).toMatchObject({ value: 142, limit: 110, margin: -32, unit: '°C' })
  expect(asked(tooHot, alone(sharp(142))).says).toContain('card of the seal')
})

it('hotter than can be told fails', () => {
  const { verdict, says } = asked(tooHot, { hot: { beyondC: 355 }, limit, thermostatC: null, heldC: null, hotAirC: null })
  expect(verdict).toBe('fail')
  expect(says).toContain('hotter than the 355.0 °C')
})

describe('with a thermostat', () => {
  it.each([
    ['that opens below the limit', sharp(142), 80, 'pass'],
    ['that opens above it', sharp(142), 120, 'fail'],
    ['that opens just at it', sharp(142), 110, 'caution'],
    ['that never comes to open', sharp(90), 120, 'pass']
  ])('%s', (_, hottestC, thermostatC, verdict) => {
    expect(verdictOf(tooHot, { ...alone(hottestC), ...off(thermostatC) })).toBe(verdict)
  })
  it('cools nothing: hotter air makes the metal as hot as the air', () => {
    const inAir = { ...alone(sharp(142)), ...off(80), hotAirC: 115 }
    expect(asked(tooHot, inAir)).toMatchObject({ verdict: 'fail', value: 115, margin: -5 })
    expect(asked(tooHot, inAir).says).toContain('the air alone brings the metal to 115.0 °C')
    expect(asked(tooHot, inAir).change).toContain('without any heater')
    expect(verdictOf(tooHot, { ...inAir, hotAirC: 79 })).toBe('pass')
  })
  describe('on the casting, with a part that stands 56 K above that', () => {
    const part = (hottestC: number, thermostatC: number) => ({
      ...alone(sharp(hottestC)),
      thermostatC,
      heldC: sharp(thermostatC + 56)
    })
    it('counts with the part as it is then: 60 and 56 K are above 110 °C, 50 and 56 K below', () => {
      expect(asked(tooHot, part(140, 60))).toMatchObject({ verdict: 'fail', value: 116, margin: -6 })
      expect(asked(tooHot, part(140, 60)).says).toBe(
        'the thermostat takes the power off at 60.0 °C, with the heated part at 116.0 °C; without it, it would settle at 140.0 °C'
      )
      expect(asked(tooHot, part(140, 50))).toMatchObject({ verdict: 'pass', value: 106 })
    })
    it('does not count where the casting never reaches it: 124 °C less 56 K is below 80 °C', () => {
      expect(asked(tooHot, part(124, 80))).toMatchObject({ verdict: 'fail', value: 124, margin: -14 })
      expect(asked(tooHot, part(124, 80)).says).not.toContain('thermostat')
      expect(asked(tooHot, part(124, 80)).change).toContain('a better joint')
      expect(asked(tooHot, part(100, 80)).change).toBe(tooHot.change)
    })
  })
  it('that opens too late is to open sooner: no word of fitting one', () => {
    const { verdict, change } = asked(tooHot, { ...alone(sharp(142)), ...off(115) })
    expect([verdict, change]).toEqual(['fail', 'take a thermostat that opens sooner, or less power'])
  })
  it('that cannot be told to open in time does not count', () => {
    expect(verdictOf(tooHot, { ...alone(sharp(142)), thermostatC: 80 })).toBe('fail')
  })
  it('says what it keeps off', () => {
    expect(asked(tooHot, { ...alone(sharp(142)), ...off(80) }).says).toBe(
      'the thermostat takes the power off at 80.0 °C; without it, it would settle at 142.0 °C'
    )
    expect(asked(tooHot, { ...alone(sharp(0)), hot: { beyondC: 355 }, ...off(80) })).toMatchObject({ verdict: 'pass', margin: 30 })
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tooHot, alone(assumed(sharp(90))))
})

it('without what it takes, or without a limit, is not judged', () => {
  expectNotJudged(
    tooHot,
    { ...alone(sharp(90)), hot: { field: 'surroundings.hot', measure: 'a thermometer' } },
    'surroundings.hot',
    'a thermometer'
  )
  expectNotJudged(tooHot, { ...alone(sharp(90)), limit: null }, 'warm.limit', 'seals')
})
