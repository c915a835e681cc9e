// table: where the metal settles against its target; the numbers are invented
import { describe, expect, it } from 'vitest'
import type { Bounded } from '../../../src/formula/bounds.ts'
import { asked } from '../../../src/rules/rule.ts'
import { neverReaches } from '../../../src/rules/warm/never-reaches.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const hold = (holdMarginK: ReturnType<typeof sharp>) => ({ hold: { holdMarginK } })

it.each([
  ['above at the worst end', between(0.1, 4), 'pass'],
  ['below at the worst end', between(-0.1, 4), 'fail'],
  ['just there', sharp(0), 'caution']
])('%s', (_, holdMarginK, verdict) => {
  expect(verdictOf(neverReaches, hold(holdMarginK))).toBe(verdict)
})

it.each([
  [sharp(3), 'it settles 3.0 K above the target'],
  [sharp(-3), 'the target is never reached: it settles 3.0 K below it'],
  [between(-1, 5), 'the target is not surely reached: it settles 1.0 K below it at the worst end']
])('says how far', (holdMarginK, says) => {
  expect(asked(neverReaches, hold(holdMarginK)).says).toBe(says)
})

describe('a thermostat', () => {
  const above = (cutMarginK: Bounded, onMarginK: Bounded | null, opens = true) => ({
    hold: { holdMarginK: sharp(30), held: { offC: sharp(60), onC: sharp(50), cutMarginK, onMarginK, opens } }
  })
  it.each([
    ['opens above the target', between(5, 15), 'pass'],
    ['may open below it', between(-5, 15), 'fail'],
    ['opens just at it', sharp(0), 'caution']
  ])('that %s', (_, cutMarginK, verdict) => {
    expect(verdictOf(neverReaches, above(cutMarginK, sharp(20)))).toBe(verdict)
    expect(verdictOf(neverReaches, above(cutMarginK, sharp(20), false))).toBe(verdict)
  })
  it('is judged at the coldest that it holds the metal at, not at where that would settle', () => {
    expect(asked(neverReaches, above(sharp(12), sharp(2)))).toMatchObject({
      verdict: 'pass',
      value: 2,
      says: 'its thermostat closes again 2.0 K above the target: so far the metal cools'
    })
    expect(asked(neverReaches, above(sharp(12), between(-2, 8)))).toMatchObject({
      verdict: 'fail',
      value: -2,
      says: 'its thermostat closes again 2.0 K below it at the worst end: so far the metal cools',
      change: expect.stringContaining('closes above the target')
    })
    expect(asked(neverReaches, above(sharp(45), sharp(40)))).toMatchObject({ value: 30, says: 'it settles 30.0 K above the target' })
  })
  it('that never opens is as none', () => {
    expect(asked(neverReaches, above(sharp(12), sharp(-2), false))).toMatchObject({ verdict: 'pass', value: 30 })
    expect(verdictOf(neverReaches, above(sharp(12), null, false))).toBe('pass')
  })
  it('holds it on a guess where what it would settle at is one: a caution that names it, and no hotter thermostat helps', () => {
    const { holdMarginK, held } = above(sharp(12), sharp(2)).hold
    const guessed = { hold: { holdMarginK: assumed(holdMarginK), held } }
    expectDoubted(neverReaches, guessed)
    expect(asked(neverReaches, guessed)).toMatchObject({ value: 2, change: neverReaches.change, assumes: [['tools', 'guessed']] })
    expect(asked(neverReaches, { hold: { holdMarginK, held: { ...held, onMarginK: assumed(sharp(40)) } } }).verdict).toBe('caution')
    expect(verdictOf(neverReaches, { hold: { ...guessed.hold, held: { ...held, onMarginK: sharp(-2) } } })).toBe('fail')
  })
  it('of which nobody told where it closes again is a caution at best, and what to give is named', () => {
    expect(asked(neverReaches, above(sharp(12), null))).toMatchObject({
      verdict: 'caution',
      says: expect.stringMatching(/^its thermostat opens 12\.0 K above the target; warm\.thermostat\.on is not given/),
      change: 'give warm.thermostat.on',
      assumes: [['warm', 'thermostat', 'on']]
    })
    expect(asked(neverReaches, { hold: { holdMarginK: sharp(30), held: 'untold' } })).toMatchObject({
      verdict: 'caution',
      says: expect.stringContaining('warm.thermostat is not given'),
      change: 'give warm.thermostat'
    })
  })
  it('that may open at a higher bus than anybody told is no pass, unless it closes above the target', () => {
    const steadyHigh = { steadyHigh: true }
    expect(verdictOf(neverReaches, { ...above(sharp(12), null, false), ...steadyHigh })).toBe('caution')
    expect(verdictOf(neverReaches, { ...above(sharp(12), sharp(-1), false), ...steadyHigh })).toBe('caution')
    expect(verdictOf(neverReaches, { ...above(sharp(12), sharp(1), false), ...steadyHigh })).toBe('pass')
    expect(verdictOf(neverReaches, { ...above(sharp(12), sharp(1)), ...steadyHigh })).toBe('pass')
    expect(verdictOf(neverReaches, { ...hold(sharp(3)), ...steadyHigh })).toBe('pass')
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(neverReaches, hold(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(neverReaches, { hold: { field: 'warm.target', measure: 'say so' } }, 'warm.target', 'say so')
})
