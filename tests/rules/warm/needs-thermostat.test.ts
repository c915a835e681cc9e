// table: least power for the cold against greatest for the heat; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { needsThermostat } from '../../../src/rules/warm/needs-thermostat.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const window = (spanW: ReturnType<typeof sharp>) => ({
  window: { leastPowerW: between(30, 36), greatestPowerW: between(34, 60), spanW },
  thermostatC: null
})

it.each([
  ['open at the worst end', between(1, 30), 'pass'],
  ['shut at the worst end', between(-2, 30), 'fail'],
  ['just open', sharp(0), 'caution']
])('%s', (_, spanW, verdict) => {
  expect(verdictOf(needsThermostat, window(spanW))).toBe(verdict)
})

it('says the powers that meet both, or that none does', () => {
  expect(asked(needsThermostat, window(sharp(3))).says).toBe('rated powers from 36.0 W to 34.0 W meet both cold moving and hot still air')
  expect(asked(needsThermostat, window(sharp(-2))).says).toBe(
    'no fixed power meets both: cold moving air asks for 36.0 W at least, hot still air allows 34.0 W at most'
  )
  expect(asked(needsThermostat, window(sharp(-2))).change).toMatch(/thermostat, or an interlock/)
})

it('with a thermostat passes whatever the window', () => {
  expect(verdictOf(needsThermostat, { ...window(sharp(-2)), thermostatC: 60 })).toBe('pass')
  expect(verdictOf(needsThermostat, { window: { field: 'circuit', measure: 'draw it' }, thermostatC: 60 })).toBe('pass')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(needsThermostat, window(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(needsThermostat, { window: { field: 'circuit', measure: 'draw it' }, thermostatC: null }, 'circuit', 'draw it')
})
