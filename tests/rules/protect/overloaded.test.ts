// table: load against what the protector may carry; the numbers are invented
import { expect, it } from 'vitest'
import { overloaded } from '../../../src/rules/protect/overloaded.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, sharp, verdictOf } from '../bounded.ts'

const subject = { protector: '10 A fuse', loadA: between(6, 7), allowedLoadA: sharp(7.5), loadRoomA: between(0.5, 1.5) }

it.each([
  ['room at the worst end', between(0.01, 1), 'pass'],
  ['none at the worst end, though some at the nominal', between(-0.01, 1), 'fail'],
  ['just none', between(0, 1), 'caution']
])('%s', (_, loadRoomA, verdict) => {
  expect(verdictOf(overloaded, { ...subject, loadRoomA })).toBe(verdict)
})

it('says both currents', () => {
  expect(asked(overloaded, subject).says).toBe('10 A fuse: 7.00 A flow at the worst end, 7.50 A may flow for good')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(overloaded, { ...subject, loadRoomA: assumed(between(1, 2)) })
})

it('where nothing is printed for the place is not judged', () => {
  expect(verdictOf(overloaded, { ...subject, allowedLoadA: null, loadRoomA: null })).toBe('not-judged')
})
