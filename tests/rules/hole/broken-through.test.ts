// table: metal left below the drill against nought; the numbers are invented
import { expect, it } from 'vitest'
import { brokenThrough } from '../../../src/rules/hole/broken-through.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const metalBelowMm = between(0.5, 1)

it.each([
  ['metal at the worst end', between(0.01, 1.2), 'pass'],
  ['none at the worst end, though some at the nominal', between(-0.01, 1.2), 'fail'],
  ['level with the back', between(0, 1.2), 'caution'],
  ['level within rounding', sharp(-1e-12), 'caution']
])('%s', (_, metalLeftMm, verdict) => {
  expect(verdictOf(brokenThrough, { metalBelowMm, metalLeftMm })).toBe(verdict)
})

it('gives the margin at the worst end and the place that moves it', () => {
  expect(asked(brokenThrough, { metalBelowMm, metalLeftMm: between(-0.3, 0.9) })).toMatchObject({
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
  expectDoubted(brokenThrough, { metalBelowMm, metalLeftMm: assumed(between(2, 3)) })
})

it('through on an assumed value fails all the same', () => {
  expect(verdictOf(brokenThrough, { metalBelowMm, metalLeftMm: assumed(between(-2, 3)) })).toBe('fail')
})

it('without the metal below is not judged', () => {
  expectNotJudged(brokenThrough, { metalBelowMm: null, metalLeftMm: null }, 'casting.metal-below', 'ultrasonic gauge')
})

it.each([
  ['none below the old hole at the worst end, whatever the drill leaves', between(-0.2, 1), 'fail', -0.2],
  ['nought below it at the worst end', between(0, 1), 'caution', 0],
  ['some below it', between(0.01, 1), 'pass', 3]
])('%s', (_, metalBelowMm, verdict, value) => {
  const finding = asked(brokenThrough, { metalBelowMm, metalLeftMm: between(3, 4) })
  expect(finding).toMatchObject({ verdict, value })
  expect(finding.says.includes('open behind')).toBe(value < 3)
})
