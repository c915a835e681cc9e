// table: power that arrives against power that is needed; the numbers are invented
import { expect, it } from 'vitest'
import { weak } from '../../../src/rules/heater/weak.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['more at the worst end', between(42.1, 60), 'pass'],
  ['less at the worst end', between(41.9, 60), 'fail'],
  ['just that', between(42, 60), 'caution']
])('%s', (_, powerW, verdict) => {
  expect(verdictOf(weak, { powerW, leastPowerW: 42, steadyBus: false })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(weak, { powerW: assumed(between(50, 60)), leastPowerW: 42, steadyBus: false })
})

it('at a bus of which nobody told how low it gets is a caution at best', () => {
  expect(verdictOf(weak, { powerW: between(50, 60), leastPowerW: 42, steadyBus: true })).toBe('caution')
  expect(verdictOf(weak, { powerW: between(30, 60), leastPowerW: 42, steadyBus: true })).toBe('fail')
})

it('without the power needed is not judged', () => {
  expectNotJudged(weak, { powerW: between(50, 60), leastPowerW: null, steadyBus: false }, 'least-power', 'a trial')
})
