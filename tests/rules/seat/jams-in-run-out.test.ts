// table: room before the thread runs out against nought; the numbers are invented
import { expect, it } from 'vitest'
import { jamsInRunOut } from '../../../src/rules/seat/jams-in-run-out.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['room at the worst end', between(0.01, 0.6), 'pass'],
  ['none at the worst end', between(-0.01, 0.6), 'fail'],
  ['nought at the worst end', between(0, 0.6), 'caution']
])('%s', (_, withStackMm, verdict) => {
  expect(verdictOf(jamsInRunOut, { runOut: { withStackMm } })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(jamsInRunOut, { runOut: { withStackMm: assumed(between(2, 3)) } })
})

it('without the length of the thread is not judged', () => {
  expectNotJudged(jamsInRunOut, { runOut: null }, 'thread-length', 'last full thread')
})
