// table: the least gap before a front centre against nought; the numbers are invented
import { expect, it } from 'vitest'
import { tapCentreMeetsPoint } from '../../../src/rules/hole/tap-centre-meets-point.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const taps = (second: ReturnType<typeof between> | null, bottoming: ReturnType<typeof between> | null) => [
  { name: 'second', centreGapMm: second },
  { name: 'bottoming', centreGapMm: bottoming }
]

it.each([
  ['room for both', taps(between(0.01, 0.4), between(3, 3)), 'pass'],
  ['the first may meet the floor', taps(between(-0.01, 0.4), between(3, 3)), 'fail'],
  ['the last may meet the floor', taps(between(3, 3), between(-0.01, 0.4)), 'fail'],
  ['nought at the worst end', taps(between(0, 0.4), between(3, 3)), 'caution']
])('%s', (_, given, verdict) => {
  expect(verdictOf(tapCentreMeetsPoint, { majorMm: 8, taps: given })).toBe(verdict)
})

it('names the tap', () => {
  expect(asked(tapCentreMeetsPoint, { majorMm: 8, taps: taps(between(1, 2), between(-1, 2)) }).says).toContain('bottoming tap')
})

it.each([
  ['a small thread without', 10, taps(null, null), 'not-judged'],
  ['a small thread with one of two', 10, taps(between(1, 2), null), 'not-judged'],
  ['a larger one without', 10.5, taps(null, null), 'pass'],
  ['a larger one with one of two', 12, taps(between(-1, 2), null), 'fail']
])('%s is %s', (_, majorMm, given, verdict) => {
  expect(verdictOf(tapCentreMeetsPoint, { majorMm, taps: given })).toBe(verdict)
})

it('says how to measure a centre', () => {
  expectNotJudged(tapCentreMeetsPoint, { majorMm: 6, taps: taps(null, null) }, 'taps.centre', 'beyond the smallest thread')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tapCentreMeetsPoint, { majorMm: 8, taps: taps(assumed(between(2, 3)), between(3, 3)) })
})
