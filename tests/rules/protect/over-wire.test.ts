// table: rating against what its wire may have; the numbers are invented
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { overWire } from '../../../src/rules/protect/over-wire.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const limit = { wireLimitA: sharp(15), says: 'table', source: SOURCES['ac-11-3'] }
const subject = { protector: 'fuse', ratingA: sharp(10), limit, wireMarginA: sharp(5), overload: null, assumed: null }

const held = { heldA: sharp(13.5), edge: 'published' } as const

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
  const overload = { ...held, overloadC: between(80, endC), insulationC: sharp(105) }
  const noTable = { ...limit, source: SOURCES.practice }
  expect(verdictOf(overWire, { ...subject, limit: noTable, overload })).toBe(verdict)
  expect(verdictOf(overWire, { ...subject, overload })).toBe(verdict)
  if (verdict !== 'pass') expect(asked(overWire, { ...subject, overload }).says).toContain('brings the wire to')
  expect(verdictOf(overWire, { ...subject, wireMarginA: sharp(-1), overload })).toBe('fail')
})

it.each([
  ['as the table has it', 0, 'caution'],
  ['in a hotter place than that', 1, 'fail']
])('a pair that a published table allows, the wire lying %s: a sum of what it would get to', (_, outside, verdict) => {
  const overload = { ...held, overloadC: sharp(300), insulationC: sharp(105) }
  const table = { ...limit, outsideCount: between(0, outside) }
  expect(verdictOf(overWire, { ...subject, limit: table, overload })).toBe(verdict)
  expect(verdictOf(overWire, { ...subject, limit: table, wireMarginA: sharp(-1), overload })).toBe('fail')
})

it('a failing overload is told by the temperature that fails', () => {
  const overload = { ...held, overloadC: between(80, 172.5), insulationC: sharp(105) }
  expect(asked(overWire, { ...subject, overload })).toMatchObject({
    value: 172.5,
    limit: 160,
    margin: -12.5,
    unit: '°C',
    source: 'ac-11-3'
  })
  // Too large for the table as well: that is told.
  expect(asked(overWire, { ...subject, wireMarginA: sharp(-1), overload })).toMatchObject({ value: -1, limit: 0, margin: -1, unit: 'A' })
})

describe('behind a style without published times', () => {
  const overload = { heldA: sharp(10), edge: 'unknown', overloadC: sharp(60), insulationC: sharp(105) } as const
  it.each([
    [60, 'caution', '10.00 A at the least, which bring the wire to 60.0 °C of the 105.0 °C of its insulation'],
    [106, 'caution', 'which bring the wire to 106.0 °C, above the 105.0 °C of its insulation'],
    [160.1, 'fail', 'and above the 160.0 °C that it stands for seconds']
  ])('its rating heats the wire to %s °C', (endC, verdict, says) => {
    const found = asked(overWire, { ...subject, overload: { ...overload, overloadC: sharp(endC) } })
    expect(found).toMatchObject({ verdict, says: expect.stringContaining(says) })
    expect(found.says).toContain('what it carries for good is not known')
  })
  it('the way out is its curve, where its rating is not too much', () => {
    expect(asked(overWire, { ...subject, overload }).change).toContain("the maker's curve")
    expect(asked(overWire, { ...subject, overload: { ...overload, overloadC: sharp(106) } }).change).toContain('smaller protector')
  })
  it('beside a table that does not hold for the wire tells that as well', () => {
    const table = { ...limit, outsideCount: sharp(1) }
    expect(asked(overWire, { ...subject, limit: table, overload })).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('the wire lies outside what the table holds for')
    })
  })
  it('within a table that allows the pair is a caution', () => {
    const table = { ...limit, outsideCount: sharp(0) }
    for (const endC of [60, 106, 300])
      expect(verdictOf(overWire, { ...subject, limit: table, overload: { ...overload, overloadC: sharp(endC) } })).toBe('caution')
  })
})

it.each([
  ['as the table has it', sharp(0), 'pass'],
  ['no table', null, 'pass'],
  ['maybe in a hotter place', between(0, 1), 'caution']
])('where no overload can be worked out the table stands alone: %s', (_, outsideCount, verdict) => {
  expect(verdictOf(overWire, { ...subject, limit: { ...limit, outsideCount } })).toBe(verdict)
})

it('passes a wire thinner than any table prints only up to a figure that one prints for it where it lies worse', () => {
  expect(verdictOf(overWire, { ...subject, limit: { ...limit, printedA: sharp(10) } })).toBe('pass')
  expect(asked(overWire, { ...subject, limit: { ...limit, printedA: between(9.9, 12) } })).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('no table prints so thin a wire')
  })
})

it('a fail of a wire whose figure is printed rests on no doubt of it', () => {
  const printed = { ...limit, wireLimitA: between(15, 16), printedA: between(15, 16) }
  const fail = { ...subject, ratingA: sharp(60), wireMarginA: between(-45, -44), limit: printed }
  expect(asked(overWire, fail)).toMatchObject({ verdict: 'fail', says: expect.not.stringContaining('no table prints') })
  const thinner = { ...printed, printedA: between(12, 16) }
  expect(asked(overWire, { ...fail, limit: thinner }).says).toContain('no table prints so thin a wire')
})

const holds = { run: 'a-b', beside: ['F2 of 20 A'], unknown: [], backedBy: [] }

describe('in company', () => {
  it('what feeds the wire beside it counts with it', () => {
    const found = asked(overWire, { ...subject, throughA: sharp(30), wireMarginA: sharp(-15), holds })
    expect(found).toMatchObject({ verdict: 'fail', source: 'iec-60364-4-43', change: expect.stringContaining('where the ways meet') })
    expect(found.says).toContain('with F2 of 20 A side by side 30.00 A may flow for good; a-b behind them may have 15.00 A')
    expect(verdictOf(overWire, { ...subject, throughA: sharp(12), wireMarginA: sharp(3), holds })).toBe('pass')
  })
  it('of unknown rating beside it only what fails already is judged', () => {
    const beside = { ...holds, beside: [], unknown: ['other'] }
    expect(asked(overWire, { ...subject, holds: beside })).toMatchObject({
      verdict: 'not-judged',
      value: null,
      change: expect.stringContaining('rating and style of the protector in other')
    })
    expect(verdictOf(overWire, { ...subject, wireMarginA: sharp(-1), holds: beside })).toBe('fail')
  })
  it('where a smaller one in the same way holds the wire, one too large is worth a word', () => {
    const backed = { ...holds, beside: [], backedBy: ['F0'] }
    expect(verdictOf(overWire, { ...subject, holds: backed })).toBe('pass')
    expect(asked(overWire, { ...subject, wireMarginA: sharp(-1), holds: backed })).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('F0 in the same way lets no more through')
    })
  })
})

it('without a limit the field that is missing is named, or what else stands in the way', () => {
  expectNotJudged(overWire, { ...subject, limit: null, lacks: { field: 'ambient', measure: 'a thermometer' } }, 'ambient', 'a thermometer')
  expect(asked(overWire, { ...subject, limit: null, lacks: { says: 'no wire', change: 'draw it' } })).toMatchObject({
    verdict: 'not-judged',
    says: 'no wire',
    change: 'draw it'
  })
})
