// table: a surface against the higher of dew and frost point; the numbers are invented
import { expect, it } from 'vitest'
import { surfaceWet } from '../../../src/rules/dew/surface-wet.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const margin = (surfaceMarginK: ReturnType<typeof sharp>) => ({ surface: { surfaceMarginK, of: 'the metal', governs: 'frost point' } })

it.each([
  ['above at the worst end', between(0.1, 4), 'pass'],
  ['below at the worst end', between(-0.1, 4), 'fail'],
  ['just there', sharp(0), 'caution']
])('%s', (_, surfaceMarginK, verdict) => {
  expect(verdictOf(surfaceWet, margin(surfaceMarginK))).toBe(verdict)
})

it('says which point, how far, and that it is an estimate', () => {
  expect(asked(surfaceWet, margin(between(-2.5, 1))).says).toMatch(/the metal is 2\.5 K below the frost point at the worst end.*estimate/)
  expect(asked(surfaceWet, margin(sharp(2.5))).says).toMatch(/2\.5 K above the frost point:/)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(surfaceWet, margin(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(surfaceWet, { surface: { field: 'warm.cooling', measure: 'a thermometer' } }, 'warm.cooling', 'a thermometer')
})
