// table: what the thread of the casting holds beyond the pull, against nought; the numbers are invented
import { describe, expect, it } from 'vitest'
import { castingStrips } from '../../../src/rules/joint/casting-strips.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const subject = (low: number, typical = false) => ({
  castingMarginN: between(low, low + 2000),
  internalStripLoadN: between(10_000, 11_000),
  preloadN: between(5000, 6000),
  typical,
  lacks: null
})

it.each([
  ['holds', subject(1), 'pass'],
  ['may strip', subject(-1), 'fail'],
  ['just holds', subject(0), 'caution'],
  ['a typical strength, 10 000 N and more over 6000', subject(4000, true), 'pass'],
  ['a typical strength, 8999 N over 6000', { ...subject(2999, true), internalStripLoadN: between(8999, 9900) }, 'caution'],
  ['a typical strength, just half as much again', { ...subject(3000, true), internalStripLoadN: between(9000, 9900) }, 'pass'],
  ['a strength of this casting, 8999 N over 6000', { ...subject(2999), internalStripLoadN: between(8999, 9900) }, 'pass']
])('%s', (_, given, verdict) => {
  expect(verdictOf(castingStrips, given)).toBe(verdict)
})

it('says why a typical strength is not enough', () => {
  const thin = { ...subject(2999, true), internalStripLoadN: between(8999, 9900) }
  expect(asked(castingStrips, thin).says).toContain('less than 1.5 times the pull, and the strength is that of cast bars')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(castingStrips, { ...subject(5), castingMarginN: assumed(between(4000, 5000)) })
})

it('names what is missing', () => {
  expectLacking(castingStrips, { ...subject(1), castingMarginN: null })
})

describe('beside a wall', () => {
  const held = subject(4000)
  const wall = (leftMm: number | null, shareFactor: number | null) => ({ leftMm, shareFactor, leastMm: 2.4 })

  it.each([
    ['thick enough', wall(6, 1), 'pass'],
    // 0.75·10 000 N over 6000 N; 0.59 of it is less than the pull.
    ['that gives way a little', wall(2.5, 0.75), 'pass'],
    ['that leaves less than the pull', wall(2.5, 0.59), 'caution'],
    ['too thin for any factor', wall(0.05, null), 'caution'],
    ['that nobody measured', wall(null, null), 'caution']
  ])('%s', (_, beside, verdict) => {
    expect(verdictOf(castingStrips, { ...held, wall: beside })).toBe(verdict)
  })

  it('says so', () => {
    expect(asked(castingStrips, { ...held, wall: wall(0.05, null) }).says).toMatch(/wall beside it is 0\.05 mm: below 2\.40 mm/)
    expect(asked(castingStrips, { ...held, wall: wall(null, null) }).says).toContain('casting.wall is not given')
  })

  it('a failing thread fails whatever the wall', () => {
    expect(verdictOf(castingStrips, { ...subject(-1), wall: wall(0.05, null) })).toBe('fail')
  })
})

it('in a hole wider than its thread allows is a caution at best', () => {
  const wide = { widestMm: 13.2, minorMaxMm: 12.676, sure: true }
  expect(verdictOf(castingStrips, { ...subject(4000), wide })).toBe('caution')
})
