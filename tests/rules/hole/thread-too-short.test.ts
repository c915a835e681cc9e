// table: full thread beyond what is needed against nought; the numbers are invented
import { expect, it } from 'vitest'
import { threadTooShort } from '../../../src/rules/hole/thread-too-short.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const threadDepthMm = sharp(10)
const wide = null

it.each([
  ['more than wanted', between(0.01, 0.6), 'pass'],
  ['less at the worst end', between(-0.01, 0.6), 'fail'],
  ['just what is wanted', between(0, 0.6), 'caution']
])('%s', (_, needMarginMm, verdict) => {
  expect(verdictOf(threadTooShort, { best: { threadDepthMm, needMarginMm }, wide })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(threadTooShort, { best: { threadDepthMm, needMarginMm: assumed(between(2, 3)) }, wide })
})

it.each([
  ['without the need', { threadDepthMm, needMarginMm: null }],
  ['without a tap', null]
])('%s is not judged', (_, best) => {
  expectNotJudged(threadTooShort, { best, wide }, 'need', 'less the stack')
})

it('no full thread at all fails without a need, and says so', () => {
  for (const depth of [sharp(-1.41), between(-0.1, 2), sharp(0)]) {
    const finding = asked(threadTooShort, { best: { threadDepthMm: depth, needMarginMm: null }, wide })
    expect(finding).toMatchObject({ verdict: 'fail', value: depth.low, limit: 0 })
    expect(finding.says).toContain('no tap leaves a full thread')
  }
})

it('in a hole that is too wide no thread is full, however deep', () => {
  const best = { threadDepthMm, needMarginMm: sharp(5) }
  const tooWide = { widestMm: 11.9, minorMaxMm: 10.676, sure: true }
  expect(asked(threadTooShort, { best, wide: tooWide })).toMatchObject({ verdict: 'fail', value: 11.9, limit: 10.676 })
  expect(verdictOf(threadTooShort, { best, wide: { ...tooWide, sure: false } })).toBe('caution')
  expect(verdictOf(threadTooShort, { best: { ...best, needMarginMm: sharp(-1) }, wide: tooWide })).toBe('fail')
})
