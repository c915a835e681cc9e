// table: room before the floor against nought; the numbers are invented
import { expect, it } from 'vitest'
import { bottomsOnFloor } from '../../../src/rules/seat/bottoms-on-floor.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const runOut = {}

it.each([
  ['room at the worst end', between(0.01, 0.6), 'pass'],
  ['none at the worst end', between(-0.01, 0.6), 'fail'],
  ['nought at the worst end', between(0, 0.6), 'caution']
])('%s', (_, withStackMm, verdict) => {
  expect(verdictOf(bottomsOnFloor, { runOut, floor: { withStackMm } })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(bottomsOnFloor, { runOut, floor: { withStackMm: assumed(between(2, 3)) } })
})

it('without the overall length is not judged', () => {
  expectNotJudged(bottomsOnFloor, { runOut, floor: null }, 'overall', 'end of the part')
})

it('where the seat could not be worked out, names what that lacks', () => {
  expectNotJudged(bottomsOnFloor, { runOut: null, floor: null }, 'thread-length', 'last full thread')
})
