// table: slow edge against 5 s; the numbers are invented
import { expect, it } from 'vitest'
import { farEndShort } from '../../../src/rules/protect/far-end-short.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const subject = { protector: 'fuse', faultA: between(40, 60), longestS: sharp(0.6), edge: 'published' } as const

it.each([
  ['soon', between(0.2, 4.9), 'pass'],
  ['just in time', between(0.2, 5), 'caution'],
  ['late at the worst end: the wire is judged by itself', between(0.2, 5.1), 'caution'],
  ['perhaps never', between(0.2, Number.POSITIVE_INFINITY), 'fail']
])('%s', (_, longestS, verdict) => {
  expect(verdictOf(farEndShort, { ...subject, longestS })).toBe(verdict)
})

it('says the least current, and that it may never open', () => {
  expect(asked(farEndShort, subject).says).toBe('fuse: at 40.00 A it opens within 0.60 s')
  expect(asked(farEndShort, { ...subject, longestS: sharp(Number.POSITIVE_INFINITY) })).toMatchObject({
    says: 'fuse: at 40.00 A it may never open',
    value: null,
    margin: null
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(farEndShort, { ...subject, longestS: assumed(sharp(0.6)) })
})

it('without the current, or without a band, is not judged', () => {
  expectNotJudged(farEndShort, { ...subject, faultA: null }, 'fault', 'there and back')
  expect(verdictOf(farEndShort, { ...subject, longestS: null })).toBe('not-judged')
})

it('past the last gate of its style nothing is said of the longest time', () => {
  expect(asked(farEndShort, { ...subject, edge: 'unknown' })).toMatchObject({
    verdict: 'not-judged',
    value: null,
    says: 'fuse: a short of 40.00 A is past the last gate of its band: no longest time is published',
    change: expect.stringContaining("maker's curve")
  })
})

it('where it is known why there is none, that is told, and no field is asked for', () => {
  const found = asked(farEndShort, { ...subject, faultA: null, unsure: { says: 'it stands elsewhere', change: 'move it' } })
  expect(found).toMatchObject({ verdict: 'not-judged', says: 'it stands elsewhere', change: 'move it' })
  expect(found.lacks).toBeUndefined()
})
