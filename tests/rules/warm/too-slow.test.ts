// table: time to the target against the time it may take; the numbers are invented
import { describe, expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { tooSlow } from '../../../src/rules/warm/too-slow.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const within = { value: 600 }
const reach = (timeToTargetS: ReturnType<typeof sharp>) => ({ reach: { timeToTargetS }, within })

it.each([
  ['in time at the worst end', between(300, 599), 'pass'],
  ['late at the worst end', between(300, 601), 'fail'],
  ['just in time', sharp(600), 'caution'],
  ['never', sharp(Number.POSITIVE_INFINITY), 'fail'],
  ['never at the worst end', { ...between(300, 500), high: Number.POSITIVE_INFINITY }, 'fail']
])('%s', (_, timeToTargetS, verdict) => {
  expect(verdictOf(tooSlow, reach(timeToTargetS))).toBe(verdict)
})

describe('says how long', () => {
  it.each([
    [sharp(90), 'it takes 90 s, and may take 10.0 min'],
    [between(300, 660), 'it takes 11.0 min at the worst end, and may take 10.0 min'],
    [sharp(9000), 'it takes 2.5 h, and may take 10.0 min'],
    [sharp(Number.POSITIVE_INFINITY), 'the target may never be reached, and it may take 10.0 min']
  ])('%#', (timeToTargetS, says) => {
    expect(asked(tooSlow, reach(timeToTargetS)).says).toBe(says)
  })
})

it('what may never come has no number, and fails all the same', () => {
  const never = { ...between(300, 500), high: Number.POSITIVE_INFINITY }
  expect(asked(tooSlow, reach(never))).toMatchObject({ verdict: 'fail', value: null, margin: null, limit: 600 })
})

it('with a thermostat that may open below the target no power helps', () => {
  const bound = sharp(5)
  const held = { offC: bound, onC: null, cutMarginK: sharp(-1), onMarginK: null, opens: true }
  const found = asked(tooSlow, { reach: { timeToTargetS: sharp(Number.POSITIVE_INFINITY), held }, within })
  expect(found).toMatchObject({ verdict: 'fail', change: 'take a thermostat that opens and closes above the target, or ask for less' })
  expect(found.says).toContain('since the thermostat may open before')
  // One that opens above it keeps nothing from it.
  const above = { ...held, cutMarginK: sharp(1) }
  expect(asked(tooSlow, { reach: { timeToTargetS: sharp(700), held: above }, within }).change).toContain('more power')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tooSlow, reach(assumed(sharp(300))))
})

it('without what it takes, or without a time, is not judged', () => {
  expectNotJudged(tooSlow, { reach: { field: 'warm.area', measure: 'foil' }, within }, 'warm.area', 'foil')
  expectNotJudged(tooSlow, { ...reach(sharp(300)), within: null }, 'warm.within', 'how long')
})
