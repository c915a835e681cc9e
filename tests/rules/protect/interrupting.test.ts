// table: short against breaking capacity; the numbers are invented
import { expect, it } from 'vitest'
import { interrupting } from '../../../src/rules/protect/interrupting.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'

const subject = {
  protector: 'fuse',
  where: 'right behind it',
  faultA: between(500, 900),
  breakingA: 1000,
  breakingSays: 'at 32 V'
} as const

it.each([
  ['less at the worst end', between(500, 999), 'pass'],
  ['more at the worst end', between(500, 1001), 'fail'],
  ['just that', between(500, 1000), 'caution']
])('%s', (_, faultA, verdict) => {
  expect(verdictOf(interrupting, { ...subject, faultA })).toBe(verdict)
})

it('says where the short is', () => {
  expect(asked(interrupting, subject).says).toBe('fuse: a short right behind it is 900.00 A, it can break 1000.00 A (at 32 V)')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(interrupting, { ...subject, faultA: assumed(between(500, 900)) })
})

it('without the source or without a figure is not judged', () => {
  expectNotJudged(interrupting, { ...subject, faultA: null }, 'source.resistance', 'step of current')
  expectNotJudged(interrupting, { ...subject, breakingA: null }, 'breaking capacity', 'on the part')
})
