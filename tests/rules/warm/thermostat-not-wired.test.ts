// table: heaters that a thermostat takes the power from, and those that it does not; the names are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { thermostatNotWired } from '../../../src/rules/warm/thermostat-not-wired.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

it('passes where none is left out, fails and names those that are', () => {
  expect(verdictOf(thermostatNotWired, { uncut: [] })).toBe('pass')
  const bare = (name: string) => ({ name, round: [] })
  expect(verdictOf(thermostatNotWired, { uncut: [bare('left')] })).toBe('fail')
  expect(asked(thermostatNotWired, { uncut: [bare('left'), bare('right')] }).says).toContain('on the way to left, right:')
})

it('tells what leads round a thermostat that is there', () => {
  const round = (name: string) => ({ name, round: ['bypass'] })
  expect(asked(thermostatNotWired, { uncut: [round('left'), round('right')] })).toMatchObject({
    verdict: 'fail',
    says: expect.stringMatching(/^bypass leads round the thermostat of left, right:/),
    change: 'take out bypass'
  })
})

it('without a drawn circuit is not judged', () => {
  expectNotJudged(thermostatNotWired, { uncut: { field: 'circuit', measure: 'draw it' } }, 'circuit', 'draw it')
})
