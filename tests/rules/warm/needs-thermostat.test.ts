// table: least power for the cold against greatest for the heat; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { needsThermostat } from '../../../src/rules/warm/needs-thermostat.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const NONE = { thermostatC: null, heldC: null, limit: { value: 110 } }
/** Its hottest spot when the casting is at 60 °C. */
const fitted = (heldC: number) => ({ thermostatC: 60, heldC: sharp(heldC), limit: { value: 110 } })

const window = (spanW: ReturnType<typeof sharp>) => ({
  window: { leastPowerW: between(30, 36), greatestPowerW: between(spanW.low > 0 ? 39 : 36 + spanW.low, 60), spanW },
  ...NONE
})

it.each([
  ['open at the worst end', between(1, 30), 'pass'],
  ['shut at the worst end', between(-2, 30), 'fail'],
  ['just open', sharp(0), 'caution']
])('%s', (_, spanW, verdict) => {
  expect(verdictOf(needsThermostat, window(spanW))).toBe(verdict)
})

it('says the powers that meet both, or that none does', () => {
  expect(asked(needsThermostat, window(sharp(3))).says).toBe('rated powers from 36.0 W to 39.0 W meet both cold moving and hot still air')
  expect(asked(needsThermostat, window(sharp(-2))).says).toBe(
    'no fixed power meets both: cold moving air asks for 36.0 W at least, hot still air allows 34.0 W at most'
  )
  expect(asked(needsThermostat, window(sharp(-2))).change).toMatch(/thermostat, or an interlock/)
})

it('one power has to do wherever between its bounds the loss lies', () => {
  const apart = { ...NONE, window: { leastPowerW: between(30, 36), greatestPowerW: between(35, 60), spanW: between(5, 24) } }
  expect(asked(needsThermostat, apart)).toMatchObject({
    verdict: 'fail',
    value: -1,
    says: expect.stringContaining('no fixed power meets both')
  })
})

it('with a thermostat passes whatever the window', () => {
  expect(verdictOf(needsThermostat, { ...window(sharp(-2)), ...fitted(60) })).toBe('pass')
  expect(verdictOf(needsThermostat, { window: { field: 'circuit', measure: 'draw it' }, ...fitted(60) })).toBe('pass')
  expect(verdictOf(needsThermostat, { ...window(sharp(-2)), ...fitted(120), limit: null })).toBe('pass')
})

it('with a thermostat that does not keep the limit passes by the window alone', () => {
  expect(verdictOf(needsThermostat, { ...window(sharp(3)), ...fitted(116) })).toBe('pass')
  const { verdict, says } = asked(needsThermostat, { ...window(sharp(-2)), ...fitted(116) })
  expect(verdict).toBe('fail')
  expect(says).toMatch(/; the thermostat does not keep the limit: when it opens the hottest spot is at 116\.0 °C$/)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(needsThermostat, window(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(needsThermostat, { window: { field: 'circuit', measure: 'draw it' }, ...NONE }, 'circuit', 'draw it')
})
