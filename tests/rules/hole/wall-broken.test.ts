// table: wall left beside the thread against nought; the numbers are invented
import { expect, it } from 'vitest'
import { wallBroken } from '../../../src/rules/hole/wall-broken.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['a wall at the worst end', between(0.01, 0.4), 'pass'],
  ['none at the worst end', between(-0.01, 0.4), 'fail'],
  ['nought at the worst end', between(0, 0.4), 'caution']
])('%s', (_, wallLeftMm, verdict) => {
  expect(verdictOf(wallBroken, { wallLeftMm })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(wallBroken, { wallLeftMm: assumed(between(2, 3)) })
})

it('without the wall is not judged', () => {
  expectNotJudged(wallBroken, { wallLeftMm: null }, 'casting.wall', 'calliper')
})
