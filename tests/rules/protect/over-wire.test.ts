// table: rating against what its wire may have; the numbers are invented
import { expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { overWire } from '../../../src/rules/protect/over-wire.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const limit = { wireLimitA: sharp(15), says: 'table', source: SOURCES['ac-11-3'] }
const subject = { protector: 'fuse', ratingA: sharp(10), limit, wireMarginA: sharp(5), overload: null, assumed: null }

it.each([
  ['room', sharp(0.1), 'pass'],
  ['too large at the worst end', between(-0.1, 2), 'fail'],
  ['just the limit', sharp(0), 'caution']
])('%s', (_, wireMarginA, verdict) => {
  expect(asked(overWire, { ...subject, wireMarginA })).toMatchObject({ verdict, source: 'ac-11-3' })
})

it('on an assumed value, or a column of the table that nobody chose, is a caution at best', () => {
  expectDoubted(overWire, { ...subject, wireMarginA: assumed(sharp(5)) })
  expect(verdictOf(overWire, { ...subject, assumed: 'insulation 105' })).toBe('caution')
})

it('without the way the wire lies is not judged', () => {
  expectNotJudged(overWire, { ...subject, limit: null }, 'insulation', 'rated for')
})

it('without a figure is not judged, and says why', () => {
  const none = { ...limit, wireLimitA: null, says: 'table 11-3 has no AWG 26' }
  expect(asked(overWire, { ...subject, limit: none, wireMarginA: null })).toMatchObject({
    verdict: 'not-judged',
    says: 'table 11-3 has no AWG 26'
  })
})

// 160 °C for up to 5 s: IEC 60364-5-54, PVC (read-secondary), the lowest printed.
it.each([
  ['at its rating', 105, 'pass'],
  ['just above its rating', 105.1, 'caution'],
  ['at what it stands for seconds', 160, 'caution'],
  ['above that', 160.1, 'fail']
])('insulation of 105 °C at an overload, %s, whatever the limit', (_, endC, verdict) => {
  const overload = { overloadC: between(80, endC), insulationC: sharp(105) }
  const noTable = { ...limit, source: SOURCES.practice }
  expect(verdictOf(overWire, { ...subject, limit: noTable, overload })).toBe(verdict)
  expect(verdictOf(overWire, { ...subject, overload })).toBe(verdict)
  if (verdict !== 'pass') expect(asked(overWire, { ...subject, overload }).says).toContain('brings the wire to')
  expect(verdictOf(overWire, { ...subject, wireMarginA: sharp(-1), overload })).toBe('fail')
})
