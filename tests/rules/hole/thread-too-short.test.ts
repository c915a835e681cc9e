// table: full thread beyond what is needed against nought; the numbers are invented
import { expect, it } from 'vitest'
import { threadTooShort } from '../../../src/rules/hole/thread-too-short.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['more than wanted', between(0.01, 0.6), 'pass'],
  ['less at the worst end', between(-0.01, 0.6), 'fail'],
  ['just what is wanted', between(0, 0.6), 'caution']
])('%s', (_, needMarginMm, verdict) => {
  expect(verdictOf(threadTooShort, { best: { needMarginMm } })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(threadTooShort, { best: { needMarginMm: assumed(between(2, 3)) } })
})

it.each([
  ['without the need', { needMarginMm: null }],
  ['without a tap', null]
])('%s is not judged', (_, best) => {
  expectNotJudged(threadTooShort, { best }, 'need', 'less the stack')
})
