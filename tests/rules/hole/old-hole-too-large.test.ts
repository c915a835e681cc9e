// table: what the drill opens of the old hole against nought; the numbers are invented
import { expect, it } from 'vitest'
import { oldHoleTooLarge } from '../../../src/rules/hole/old-hole-too-large.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'

it.each([
  ['a drill that cuts all round', between(0.01, 0.4), 'pass'],
  ['a drill that may pass through', between(-0.01, 0.4), 'fail'],
  ['a drill of the size of the hole', between(0, 0.4), 'caution']
])('%s', (_, openingMm, verdict) => {
  expect(verdictOf(oldHoleTooLarge, { openingMm })).toBe(verdict)
})

it('with an assumed drill is a caution at best', () => {
  expectDoubted(oldHoleTooLarge, { openingMm: assumed(between(2, 3)) })
})
