// table: a circuit in order against the likeliest fault; the numbers are invented
import { expect, it } from 'vitest'
import { faultLikely } from '../../../src/rules/prove/fault-likely.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

const subject = (healthyPercent: number, likeliestPercent: number, unexplained = false) => ({
  diagnosis: { healthyPercent, likeliestPercent, likeliest: 'open: left', unexplained }
})

it.each([
  ['nine to one', 90.1, 5, 'pass'],
  ['likelier than any fault, and no more', 60, 20, 'caution'],
  ['as likely', 40, 40, 'caution'],
  ['less likely, and still no fail', 10, 60, 'caution']
])('in order is %s', (_, healthy, likeliest, verdict) => {
  expect(verdictOf(faultLikely, subject(healthy, likeliest))).toBe(verdict)
})

it('what no single fault explains never passes', () => {
  const { verdict, says } = asked(faultLikely, subject(90, 5, true))
  expect(verdict).toBe('caution')
  expect(says).toContain('no single fault explains')
})

it('the ends of a scale are not rounded away', () => {
  expect(asked(faultLikely, subject(0.0001, 99.9999)).says).toContain('in order: below 0.1 %; likeliest fault: open: left, over 99.9 %')
  expect(asked(faultLikely, subject(0, 100)).says).toContain('in order: 0.0 %; likeliest fault: open: left, 100.0 %')
})

it('without readings is not judged', () => {
  expectNotJudged(faultLikely, { diagnosis: null }, 'a reading', '--reading')
})
