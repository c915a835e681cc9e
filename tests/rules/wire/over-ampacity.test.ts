// table: current against what the wire carries; the numbers are invented
import { expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { asked } from '../../../src/rules/rule.ts'
import { overAmpacity } from '../../../src/rules/wire/over-ampacity.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const subject = {
  currentA: between(8, 10),
  ampacityA: sharp(10),
  spareA: between(0.1, 2),
  holds: 'one wire, 30 °C',
  figureSource: SOURCES['33-cfr-183.425'],
  assumed: null
}

it.each([
  ['room at the worst end', between(0.1, 2), 'pass'],
  ['none at the worst end, though some at the nominal', between(-0.1, 2), 'fail'],
  ['just none', between(0, 2), 'caution']
])('%s', (_, spareA, verdict) => {
  expect(verdictOf(overAmpacity, { ...subject, spareA })).toBe(verdict)
})

it('says the conditions of the figure and whose it is', () => {
  const { says, source } = asked(overAmpacity, subject)
  expect(says).toContain('10.00 A flow')
  expect(says).toContain('holds for one wire, 30 °C')
  expect(source).toBe('33-cfr-183.425')
})

it('on an assumed value, or a column of the table that nobody chose, is a caution at best', () => {
  expectDoubted(overAmpacity, { ...subject, spareA: assumed(between(1, 2)) })
  expect(asked(overAmpacity, { ...subject, assumed: 'insulation 105' })).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('insulation 105')
  })
})

it('passes a wire thinner than any table prints only up to a figure that one prints for it where it lies worse', () => {
  expect(verdictOf(overAmpacity, { ...subject, printedA: sharp(10) })).toBe('pass')
  expect(asked(overAmpacity, { ...subject, printedA: sharp(9.9) })).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('no table prints so thin a wire')
  })
})

it('too much for a wire whose figure is printed rests on no doubt of it', () => {
  const fail = { ...subject, currentA: sharp(12), spareA: sharp(-2), printedA: sharp(10) }
  expect(asked(overAmpacity, fail)).toMatchObject({ verdict: 'fail', says: expect.not.stringContaining('no table prints') })
})

it('without the way it lies is not judged', () => {
  expectNotJudged(overAmpacity, { ...subject, holds: null }, 'insulation', 'rated for')
})

it('without a figure is not judged, and says why', () => {
  const { verdict, says } = asked(overAmpacity, { ...subject, spareA: null, ampacityA: null, holds: 'nothing published' })
  expect([verdict, says]).toEqual(['not-judged', 'nothing published'])
})

it('what of how it lies is not given is named', () => {
  const lacks = { field: 'ambient', measure: 'a thermometer' }
  expectNotJudged(overAmpacity, { ...subject, holds: null, lacks }, 'ambient', 'a thermometer')
})
