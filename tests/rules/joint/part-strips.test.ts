// table: what the thread of the part holds beyond the pull, against nought; the numbers are invented
import { expect, it } from 'vitest'
import { partStrips } from '../../../src/rules/joint/part-strips.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

it.each([
  ['holds', between(1, 900), 'pass'],
  ['may strip', between(-1, 900), 'fail'],
  ['just holds', between(0, 900), 'caution']
])('%s', (_, partMarginN, verdict) => {
  expect(verdictOf(partStrips, { partMarginN, lacks: null })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(partStrips, { partMarginN: assumed(between(4000, 5000)), lacks: null })
})

it('names what is missing', () => {
  expectLacking(partStrips, { partMarginN: null, lacks: null })
})
