// table: what the drill opens of the old hole against nought; the numbers are invented
import { expect, it } from 'vitest'
import { oldHoleTooLarge } from '../../../src/rules/hole/old-hole-too-large.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'

const waysOut = ['an insert', 'another place']

it.each([
  ['a drill that cuts all round', between(0.01, 0.4), 'pass'],
  ['a drill that may pass through', between(-0.01, 0.4), 'fail'],
  ['a drill of the size of the hole', between(0, 0.4), 'caution']
])('%s', (_, openingMm, verdict) => {
  expect(verdictOf(oldHoleTooLarge, { openingMm, waysOut })).toBe(verdict)
})

it('with an assumed drill is a caution at best', () => {
  expectDoubted(oldHoleTooLarge, { openingMm: assumed(between(2, 3)), waysOut })
})

it('names the ways out', () => {
  expect(asked(oldHoleTooLarge, { openingMm: between(-1, -0.5), waysOut }).change).toBe('an insert; or another place')
})
