// table: the ground point that stands furthest from 0 V against a limit; the numbers are invented
import { expect, it } from 'vitest'
import { shift } from '../../../src/rules/ground/shift.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const limit = { value: 0.2 }
const at = (low: number, high: number, point = 'block') => ({ point, shiftV: between(low, high) })

it.each([
  ['below at the worst end', [at(0.1, 0.19)], 'pass'],
  ['above at the worst end, though below at the nominal', [at(0.1, 0.21)], 'fail'],
  ['just the limit', [at(0.1, 0.2)], 'caution'],
  ['one of two above', [at(0, 0.01), at(0.2, 0.3, 'bracket')], 'fail']
])('%s', (_, groundPoints, verdict) => {
  expect(verdictOf(shift, { groundPoints, limit })).toBe(verdict)
})

it('where a load alone comes back nothing else is lifted, and its own drop is asked for elsewhere', () => {
  const own = { ...at(0.2, 0.3, 'h-'), alone: 'heater' }
  expect(asked(shift, { groundPoints: [own], limit })).toMatchObject({ verdict: 'pass', says: expect.stringContaining('heater alone') })
  expect(verdictOf(shift, { groundPoints: [own, at(0.1, 0.21)], limit })).toBe('fail')
})

it('names the point', () => {
  expect(asked(shift, { groundPoints: [at(0, 0.01), at(0.2, 0.3, 'bracket')], limit }).says).toContain('voltage of bracket against 0 V')
})

it('says the reason of a limit of the job', () => {
  const own = { value: 0.05, reason: 'a sender sits on that block' }
  expect(asked(shift, { groundPoints: [at(0.01, 0.02)], limit: own }).says).toContain('a sender sits on that block')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(shift, { groundPoints: [{ point: 'block', shiftV: assumed(sharp(0.01)) }], limit })
})

it('without a return that was drawn is not judged', () => {
  expectNotJudged(shift, { groundPoints: [], limit }, 'circuit.runs', 'down to the 0 V point')
})

it('where nobody knows what a load takes it may fail, but not pass', () => {
  const unsure = { says: 'lamp gets nothing behind switch S1, drawn open: what it gets is not known', change: 'close it' }
  expect(asked(shift, { groundPoints: [at(0, 0.1)], limit, unsure })).toMatchObject({ verdict: 'not-judged', ...unsure })
  expect(verdictOf(shift, { groundPoints: [at(0, 0.3)], limit, unsure })).toBe('fail')
  expect(asked(shift, { groundPoints: [], limit, unsure })).toMatchObject({ verdict: 'not-judged', ...unsure })
})
