// table: heaters that a thermostat takes the power from, and those that it does not; the names are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { thermostatNotWired } from '../../../src/rules/warm/thermostat-not-wired.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

it('passes where none is left out, fails and names those that are', () => {
  expect(verdictOf(thermostatNotWired, { uncut: [] })).toBe('pass')
  expect(verdictOf(thermostatNotWired, { uncut: ['left'] })).toBe('fail')
  expect(asked(thermostatNotWired, { uncut: ['left', 'right'] }).says).toContain('on the way to left, right:')
})

it('without a drawn circuit is not judged', () => {
  expectNotJudged(thermostatNotWired, { uncut: { field: 'circuit', measure: 'draw it' } }, 'circuit', 'draw it')
})
