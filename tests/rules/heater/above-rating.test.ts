// table: share of the rated power against 100 %, and against that of 16 V on 12 V, 32 V on 24 V (ISO 16750-2, memory); the numbers are invented
import { expect, it } from 'vitest'
import { aboveRating } from '../../../src/rules/heater/above-rating.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'

it.each([
  ['below at the worst end', between(80, 99.9), 'pass'],
  ['above at the worst end', between(80, 100.1), 'caution'],
  ['16 V on 12 V', between(100, 100 * (16 / 12) ** 2), 'caution'],
  ['more than equipment is tried at', between(150, 178), 'fail'],
  ['just the rating', between(80, 100), 'caution']
])('%s', (_, ratedSharePercent, verdict) => {
  expect(verdictOf(aboveRating, { ratedSharePercent, steadyHigh: false })).toBe(verdict)
})

it('gives the margin at the worst end', () => {
  expect(asked(aboveRating, { ratedSharePercent: between(80, 137.5), steadyHigh: false })).toMatchObject({
    value: 137.5,
    limit: 100,
    margin: -37.5,
    unit: '%'
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(aboveRating, { ratedSharePercent: assumed(between(50, 60)), steadyHigh: false })
})

it('at a bus of which nobody told how high it gets is a caution at best', () => {
  expect(verdictOf(aboveRating, { ratedSharePercent: between(80, 95), steadyHigh: true })).toBe('caution')
})

it('says where the share is that with every other load off', () => {
  const { verdict, says } = asked(aboveRating, { ratedSharePercent: between(80, 106), othersOff: true })
  expect(verdict).toBe('caution')
  expect(says).toMatch(/106\.0 %.*; with every other load off$/)
})
