// table: quick edge against the inrush; the numbers are invented
import { expect, it } from 'vitest'
import { inrush } from '../../../src/rules/protect/inrush.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const subject = { protector: 'fuse', inrush: { currentA: between(18, 20), lastsS: 0.5 }, shortestS: sharp(0.8) }

it.each([
  ['outlasts it at the worst end', between(0.51, 2), 'pass'],
  ['may open before at the worst end', between(0.49, 2), 'fail'],
  ['just as long', between(0.5, 2), 'caution'],
  ['never opens', sharp(Number.POSITIVE_INFINITY), 'pass']
])('%s', (_, shortestS, verdict) => {
  expect(verdictOf(inrush, { ...subject, shortestS })).toBe(verdict)
})

it('says when it may open; an edge that nobody published counts as at once', () => {
  expect(asked(inrush, subject).says).toBe('fuse: at 20.00 A it may open in 0.80 s at the soonest; the inrush lasts 0.50 s')
  expect(asked(inrush, { ...subject, shortestS: sharp(0) }).says).toContain('no shortest time is published')
  expect(asked(inrush, { ...subject, shortestS: sharp(Number.POSITIVE_INFINITY) }).says).toContain('does not open')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(inrush, { ...subject, shortestS: assumed(sharp(0.8)) })
})

it('without the inrush, or without a band, is not judged', () => {
  expectNotJudged(inrush, { ...subject, inrush: null }, 'inrush', 'clamp meter')
  expect(verdictOf(inrush, { ...subject, shortestS: null })).toBe('not-judged')
})

it('where it is known why there is none, that is told, and no field is asked for', () => {
  const found = asked(inrush, { ...subject, inrush: null, unsure: { says: 'it stands elsewhere', change: 'move it' } })
  expect(found).toMatchObject({ verdict: 'not-judged', says: 'it stands elsewhere', change: 'move it' })
  expect(found.lacks).toBeUndefined()
})

it('names the loads that nobody knows cold, at the first of them', () => {
  const unknown = { names: ['lamp', 'fan'], at: ['circuit', 'loads', 1] }
  const found = asked(inrush, { ...subject, inrush: null, unknown })
  expect(found).toMatchObject({ verdict: 'not-judged', lacks: 'inrush', at: unknown.at, says: expect.stringContaining('of lamp, fan,') })
})

it('is a caution where a load is taken as a plain resistance', () => {
  expect(asked(inrush, { ...subject, assumedCold: ['pad'] })).toMatchObject({ verdict: 'caution', says: expect.stringContaining('of pad') })
})
