// property: a better meter is never farther off; and a table of the ranges of a meter of 6000 counts
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { meterError, meterText, stepOf, usualMeter } from '../../../src/trade/proof/meter.ts'

const takes = fc.constantFrom('volts', 'amps', 'ohms' as const) as fc.Arbitrary<'volts' | 'amps' | 'ohms'>
const shown = fc.double({ min: -900, max: 900, noNaN: true })
const percent = fc.double({ min: 0, max: 5, noNaN: true })
const digits = fc.nat(10)

it('a better meter is never farther off', () => {
  fc.assert(
    fc.property(takes, shown, percent, percent, digits, digits, (what, value, a, b, m, n) => {
      const better = { accuracyPercent: Math.min(a, b), digitsCount: Math.min(m, n), resolution: null }
      const worse = { accuracyPercent: Math.max(a, b), digitsCount: Math.max(m, n), resolution: null }
      expect(meterError(what, better, value)).toBeLessThanOrEqual(meterError(what, worse, value))
    })
  )
})

it('is the same for either sign', () => {
  fc.assert(
    fc.property(takes, shown, (what, value) => {
      expect(meterError(what, usualMeter(what), -value)).toBe(meterError(what, usualMeter(what), value))
    })
  )
})

describe('one step of the last figure', () => {
  it.each([
    ['volts', 0, 0.0001],
    ['volts', 0.6, 0.0001],
    ['volts', 0.601, 0.001],
    ['volts', 26.4, 0.01],
    ['volts', 60, 0.01],
    ['volts', 61, 0.1],
    ['amps', 0.4, 0.01],
    ['amps', 250, 0.1],
    ['ohms', 9.6, 0.1],
    ['ohms', 6e7, 10_000]
  ] as const)('%s of %d: %d', (what, value, step) => expect(stepOf(what, value)).toBeCloseTo(step, 9))
})

it('a resolution that was given is used in every range', () => {
  expect(meterError('volts', { accuracyPercent: 0, digitsCount: 3, resolution: 0.1 }, 0.02)).toBeCloseTo(0.3, 12)
})

it('is written as on its sheet', () => {
  expect(meterText(usualMeter('volts'))).toBe('± (0.5 % + 2 digits)')
  expect(meterText({ accuracyPercent: 1, digitsCount: 1, resolution: null })).toBe('± (1 % + 1 digit)')
})
