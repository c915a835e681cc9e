// table: metal left below the drill against nought; the numbers are invented
import { expect, it } from 'vitest'
import { brokenThrough } from '../../../src/rules/hole/broken-through.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

it.each([
  ['metal at the worst end', between(0.01, 1.2), 'pass'],
  ['none at the worst end, though some at the nominal', between(-0.01, 1.2), 'fail'],
  ['level with the back', between(0, 1.2), 'caution'],
  ['level within rounding', sharp(-1e-12), 'caution']
])('%s', (_, metalLeftMm, verdict) => {
  expect(verdictOf(brokenThrough, { metalLeftMm })).toBe(verdict)
})

it('gives the margin at the worst end and the place that moves it', () => {
  expect(asked(brokenThrough, { metalLeftMm: between(-0.3, 0.9) })).toMatchObject({
    rule: 'hole/broken-through',
    value: -0.3,
    limit: 0,
    margin: -0.3,
    unit: 'mm',
    source: 'geometry',
    at: ['holes', 'left', 'measured'],
    worstAt: [-0.3]
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(brokenThrough, { metalLeftMm: assumed(between(2, 3)) })
})

it('through on an assumed value fails all the same', () => {
  expect(verdictOf(brokenThrough, { metalLeftMm: assumed(between(-2, 3)) })).toBe('fail')
})

it('without the metal below is not judged', () => {
  expectNotJudged(brokenThrough, { metalLeftMm: null }, 'casting.metal-below', 'ultrasonic gauge')
})
