// table: where the metal settles against its target; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { neverReaches } from '../../../src/rules/warm/never-reaches.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const hold = (holdMarginK: ReturnType<typeof sharp>) => ({ hold: { holdMarginK, cutMarginK: null } })

it.each([
  ['above at the worst end', between(0.1, 4), 'pass'],
  ['below at the worst end', between(-0.1, 4), 'fail'],
  ['just there', sharp(0), 'caution']
])('%s', (_, holdMarginK, verdict) => {
  expect(verdictOf(neverReaches, hold(holdMarginK))).toBe(verdict)
})

it.each([
  [sharp(3), 'it settles 3.0 K above the target'],
  [sharp(-3), 'the target is never reached: it settles 3.0 K below it'],
  [between(-1, 5), 'the target is not surely reached: it settles 1.0 K below it at the worst end']
])('says how far', (holdMarginK, says) => {
  expect(asked(neverReaches, hold(holdMarginK)).says).toBe(says)
})

it.each([
  ['opens above the target', between(5, 15), 'pass'],
  ['may open below it', between(-5, 15), 'fail'],
  ['opens just at it', sharp(0), 'caution']
])('a thermostat that %s', (_, cutMarginK, verdict) => {
  expect(verdictOf(neverReaches, { hold: { holdMarginK: sharp(30), cutMarginK } })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(neverReaches, hold(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(neverReaches, { hold: { field: 'warm.target', measure: 'say so' } }, 'warm.target', 'say so')
})
