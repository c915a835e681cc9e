// table: end of a short against the limit of the insulation; the numbers are invented
import { describe, expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { shortCircuit } from '../../../src/rules/wire/short-circuit.ts'
import { assumed, between, expectDoubted, sharp, verdictOf } from '../bounded.ts'

const short = {
  faultA: between(80, 120),
  longestS: sharp(0.4),
  endC: between(110, 140),
  limitC: sharp(160),
  marginK: between(20, 50),
  edge: 'published'
} as const
const subject = { short, protector: 'a blade fuse of 10 A' }

it.each([
  ['room at the worst end', between(1, 50), 'pass'],
  ['too hot at the worst end', between(-1, 50), 'fail'],
  ['just at the limit', between(0, 50), 'caution']
])('%s', (_, marginK, verdict) => {
  expect(verdictOf(shortCircuit, { ...subject, short: { ...short, marginK } })).toBe(verdict)
})

it('says the current, the time and the temperature', () => {
  expect(asked(shortCircuit, subject).says).toContain(
    'behind a blade fuse of 10 A a short of 80.00 A or more is cleared in 0.40 s at the latest: the wire gets to 140.0 °C'
  )
})

it('a protector that may never open is told as such', () => {
  expect(asked(shortCircuit, { ...subject, short: { ...short, longestS: sharp(Number.POSITIVE_INFINITY) } }).says).toContain(
    'perhaps never'
  )
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(shortCircuit, { ...subject, short: { ...short, marginK: assumed(between(20, 50)) } })
})

it('without a protector is not judged', () => {
  expect(asked(shortCircuit, { short: null, protector: 'no protector' })).toMatchObject({
    verdict: 'not-judged',
    says: expect.stringContaining('opening times are published'),
    change: expect.stringContaining('rating and style of the fuse')
  })
})

describe('past the last gate of a style', () => {
  const hot = { ...short, marginK: between(-1, 50) }
  it('a bound fails nothing, and the curve of the maker is asked for', () => {
    const found = asked(shortCircuit, { ...subject, short: { ...hot, edge: 'bound' } })
    expect(found).toMatchObject({ verdict: 'caution', says: expect.stringContaining('may open far sooner') })
    expect(found.change).toContain("maker's curve")
    expect(verdictOf(shortCircuit, { ...subject, short: { ...short, edge: 'bound' } })).toBe('pass')
  })
  it('without a bound nothing is judged, well or ill', () => {
    for (const one of [short, hot])
      expect(asked(shortCircuit, { ...subject, short: { ...one, edge: 'unknown' } })).toMatchObject({
        verdict: 'not-judged',
        value: null,
        says: expect.stringContaining('no longest time is published')
      })
  })
})

it('without a short, though there is a protector, the reason is told', () => {
  const lacks = { field: 'ambient', measure: 'a thermometer' }
  expect(asked(shortCircuit, { short: null, protector: 'F1', lacks })).toMatchObject({ verdict: 'not-judged', lacks: 'ambient' })
  const unsure = { says: 'no current', change: 'draw it' }
  expect(asked(shortCircuit, { short: null, protector: 'F1', lacks: unsure })).toMatchObject({ says: 'no current', change: 'draw it' })
  expect(verdictOf(shortCircuit, { ...subject, lacks: unsure })).toBe('pass')
})
