// table: engagement beyond what is wanted against nought; the numbers are invented
import { expect, it } from 'vitest'
import { stackTooThick } from '../../../src/rules/seat/stack-too-thick.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['enough', between(0.01, 0.4), 'pass'],
  ['perhaps too little', between(-0.01, 0.4), 'fail'],
  ['just enough', between(0, 0.4), 'caution']
])('%s', (_, engagedMarginMm, verdict) => {
  expect(verdictOf(stackTooThick, { engagedMarginMm })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(stackTooThick, { engagedMarginMm: assumed(between(1, 2)) })
})

it('without a need is not judged', () => {
  expectNotJudged(stackTooThick, { engagedMarginMm: null }, 'need', 'full threads')
})
