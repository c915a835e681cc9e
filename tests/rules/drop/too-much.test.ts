// table: drop against a limit in percent or in volts; the numbers are invented
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { tooMuch } from '../../../src/rules/drop/too-much.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const inPercent = { value: 3, unit: '%' } as const
const inVolts = { value: 0.5, unit: 'V' } as const

describe('as a share of the bus', () => {
  it.each([
    ['below at the worst end', between(2, 2.99), 'pass'],
    ['above at the worst end, though below at the nominal', between(2, 3.01), 'fail'],
    ['just the limit', between(2, 3), 'caution']
  ])('%s', (_, dropPercent, verdict) => {
    expect(verdictOf(tooMuch, { dropV: sharp(9), dropPercent, limit: inPercent })).toBe(verdict)
  })

  it('without the bus is not judged', () => {
    expectNotJudged(tooMuch, { dropV: sharp(0.1), dropPercent: undefined, limit: inPercent }, 'bus', 'machine running')
    expectNotJudged(tooMuch, { dropV: sharp(0.1), dropPercent: null, limit: inPercent }, 'bus', 'machine running')
  })
})

describe('in volts', () => {
  it.each([
    ['below at the worst end', between(0.3, 0.49), 'pass'],
    ['above at the worst end', between(0.3, 0.51), 'fail'],
    ['just the limit', between(0.3, 0.5), 'caution']
  ])('%s', (_, dropV, verdict) => {
    expect(verdictOf(tooMuch, { dropV, dropPercent: sharp(99), limit: inVolts })).toBe(verdict)
  })

  it('needs no bus', () => {
    expect(verdictOf(tooMuch, { dropV: sharp(0.1), dropPercent: undefined, limit: inVolts })).toBe('pass')
  })
})

it('the source is that of the limit where it has one', () => {
  const subject = { dropV: sharp(0.1), dropPercent: sharp(1) }
  expect(asked(tooMuch, { ...subject, limit: { ...inPercent, source: SOURCES['abyc-e-11'] } }).source).toBe('abyc-e-11')
  expect(asked(tooMuch, { ...subject, limit: inPercent }).source).toBe('practice')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tooMuch, { dropV: sharp(0.1), dropPercent: assumed(between(1, 2)), limit: inPercent })
})

it('without a circuit is not judged', () => {
  expectNotJudged(tooMuch, { dropV: null, dropPercent: null, limit: inPercent }, 'circuit', 'every run')
})

it('without a limit is not judged', () => {
  expectNotJudged(tooMuch, { dropV: sharp(0.1), dropPercent: sharp(1), limit: null }, 'limits.drop', 'with its reason')
})

it('asks for the limit where it can be given', () => {
  const without = { dropV: sharp(0.1), dropPercent: sharp(1), limit: null }
  expectNotJudged(tooMuch, without, 'limits.drop', 'give one with its reason')
  expectNotJudged(tooMuch, { ...without, limitBy: '--limit' }, '--limit', 'give one with its reason')
})
