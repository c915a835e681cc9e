// table: a torque against both ends of its band; the numbers are invented
import { describe, expect, it } from 'vitest'
import { outsideBand } from '../../../src/rules/joint/outside-band.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, searched, sharp, verdictOf } from '../bounded.ts'

const about = between
const subject = (low: number, high: number) => ({
  torqueNm: about(low, high),
  lowestTorqueNm: between(5, 6),
  highestTorqueNm: between(20, 24),
  proofTorqueNm: between(21, 25),
  solid: false,
  noNeck: false,
  lacks: null
})

it.each([
  ['well inside', 10, 11, 'pass'],
  ['its high end above the low end of the highest', 19, 20.01, 'fail'],
  ['its low end below the high end of the lowest', 5.99, 7, 'fail'],
  ['just at the highest', 10, 20, 'caution'],
  ['just at the lowest', 6, 8, 'caution']
])('%s', (_, low, high, verdict) => {
  expect(verdictOf(outsideBand, subject(low, high))).toBe(verdict)
})

it('holds the torque against the nearer end, both at their worst', () => {
  expect(asked(outsideBand, subject(10, 18))).toMatchObject({ value: 18, limit: 20, margin: 2, unit: 'N·m' })
  expect(asked(outsideBand, subject(8, 10))).toMatchObject({ value: 8, limit: 6, margin: 2 })
})

it('without a clamping force only the upper end counts', () => {
  expect(verdictOf(outsideBand, { ...subject(0.1, 0.2), lowestTorqueNm: null })).toBe('pass')
})

describe('what is missing', () => {
  it('the torque', () => {
    expectNotJudged(outsideBand, { ...subject(1, 2), torqueNm: null }, 'torque.card', "maker's card")
  })

  it('the friction', () => {
    expectNotJudged(outsideBand, { ...subject(1, 2), highestTorqueNm: null }, 'nut-factor', 'load cell')
  })
})

it('on an assumed value, or an end that was searched for, is a caution at best', () => {
  expectDoubted(outsideBand, { ...subject(10, 11), highestTorqueNm: assumed(sharp(30)) })
  expect(verdictOf(outsideBand, { ...subject(10, 11), highestTorqueNm: searched(sharp(30)) })).toBe('caution')
})

it.each([
  ['a bore that nobody told', { solid: true }, 'reckoned with a solid body'],
  ['a neck that nobody told', { noNeck: true }, 'reckoned without one'],
  ['a wrench that nobody knows', { torqueNm: assumed(between(10, 11)) }, 'hangs on what was assumed'],
  ['a wall beside the thread that nobody told', { wall: { leftMm: null, leastMm: 4, shareFactor: null } }, 'casting.wall is not given'],
  ['a wall too thin to be known', { wall: { leftMm: 1, leastMm: 4, shareFactor: null } }, 'nobody knows what it holds']
])('%s is a caution at best, and beyond the band a fail', (_, more, says) => {
  const inside = asked(outsideBand, { ...subject(10, 11), ...more })
  expect(inside).toMatchObject({ verdict: 'caution', says: expect.stringContaining(says) })
  expect(verdictOf(outsideBand, { ...subject(19, 20.01), ...more, torqueNm: between(19, 20.01) })).toBe('fail')
})

it('without a proof stress the band is a caution at best, and beyond it a fail', () => {
  const unproved = (low: number, high: number) => asked(outsideBand, { ...subject(low, high), proofTorqueNm: null })
  expect(unproved(10, 11)).toMatchObject({ verdict: 'caution', says: expect.stringContaining('its proof stress is not known') })
  expect(unproved(19, 20.01).verdict).toBe('fail')
})
