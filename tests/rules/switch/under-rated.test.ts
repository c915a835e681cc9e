// table: rating against FAA AC 43.13-1B table 11-4 (read-secondary): 28 V DC: lamp 8, resistive heater 2
import { expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { asked } from '../../../src/rules/rule.ts'
import { underRated } from '../../../src/rules/switch/under-rated.ts'
import { type SwitchGiven, switchNeed, switchNeeds } from '../../../src/trade/circuit/switch.ts'
import { assumed, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const given = (load: SwitchGiven['load'], currentA: number): SwitchGiven => ({
  busV: new Given(27.2),
  currentA: new Given(currentA),
  load,
  coldRatio: null,
  rating: null
})
const subject = (load: SwitchGiven['load'], currentA: number, ratingA: number | null) => ({
  name: 'switch S2',
  ratingA,
  ...boundsOf(given(load, currentA), switchNeed)
})

it.each([
  ['a heater at half the rating', subject('resistive', 4.9, 10), 'pass'],
  ['a heater at just half the rating', subject('resistive', 5, 10), 'caution'],
  ['a heater above half the rating', subject('resistive', 5.1, 10), 'fail'],
  ['a lamp of the same current', subject('lamp', 4.9, 10), 'fail'],
  ['a lamp at less than an eighth', subject('lamp', 1.2, 10), 'pass']
])('%s', (_, it, verdict) => {
  expect(verdictOf(underRated, it)).toBe(verdict)
})

it('says what is needed and why', () => {
  expect(asked(underRated, subject('resistive', 6, 10)).says).toBe(
    'switch S2 of 10.00 A DC; 12.00 A needed: the load times 2 (28 V DC row), closing on 6.00 A'
  )
})

it('on an assumed value is a caution at best', () => {
  const need = subject('resistive', 4, 10)
  expectDoubted(underRated, { ...need, neededA: assumed(need.neededA) })
})

it('without a rating is not judged', () => {
  expectNotJudged(underRated, subject('resistive', 4, null), 'rating', 'AC rating')
})

it.each([
  ['a rating that is too small at 28 V already', 4.9, 'fail'],
  ['a rating that would do at 28 V', 100, 'not-judged']
])('above the voltages of the table: %s', (_, ratingA, verdict) => {
  const need = boundsOf({ ...given('resistive', 4.9), busV: new Given(27, { low: 24, high: 57 }) }, switchNeed)
  expect(asked(underRated, { name: 'switch S2', ratingA, ...need })).toMatchObject({ verdict })
  expect(asked(underRated, { name: 'switch S2', ratingA, ...need, busV: sharp(32) }).verdict).not.toBe('not-judged')
})

it.each(['unknownCold', 'assumedCold'] as const)('names a load that is %s, is no pass for it and no better than a fail', key => {
  expect(asked(underRated, { ...subject('lamp', 1.2, 10), [key]: ['work lamp'] })).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('work lamp')
  })
  expect(verdictOf(underRated, { ...subject('lamp', 4.9, 10), [key]: ['work lamp'] })).toBe('fail')
})

// At 28 V: 2 · 3 A, 8 · 1 A and 3 · 1 A.
it('adds each load by its own factor, and one that nobody knows cold by that as well', () => {
  const one = (name: string, load: SwitchGiven['load'], currentA: number) => ({
    name,
    load,
    currentA,
    cold: { by: 'told' as const, ratio: 1 }
  })
  const loads = [one('pad', 'resistive', 3), one('lamp', 'lamp', 1), one('fan', 'motor', 1)]
  expect(switchNeeds({ busV: 27.2, loads, rating: null })).toMatchObject({
    neededA: 17,
    makeA: 5,
    factors: 'pad times 2, lamp times 8, fan times 3'
  })
  const unknown = loads.map(load =>
    load.name === 'lamp'
      ? { ...load, cold: { by: 'not known' as const, leastRatio: 0 } }
      : { ...load, cold: { by: 'told' as const, ratio: 3 } }
  )
  // 3 · 3 A, 8 · 1 A, 3 · 1 A.
  expect(switchNeeds({ busV: 27.2, loads: unknown, rating: null })).toMatchObject({ neededA: 20, makeA: null })
})
