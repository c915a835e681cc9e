// table: a surface against the higher of dew and frost point; the numbers are invented
import { expect, it } from 'vitest'
import { surfaceWet } from '../../../src/rules/dew/surface-wet.ts'
import type { Held } from '../../../src/rules/held-metal.ts'
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

it('that a thermostat holds is judged at the coldest it is held at', () => {
  // Off at 3 to 7 °C and on again at 0 to 2 °C, the dew point 6.5 °C: 3.5 K and 6.5 K below it.
  const held = { offC: between(3, 7), onC: null, cutMarginK: between(-3.5, 0.5), onMarginK: null, opens: true }
  const warmed = (one: Held) => ({ surface: { ...margin(sharp(77)).surface, governs: 'dew point', held: one } })
  expect(asked(surfaceWet, warmed(held))).toMatchObject({
    verdict: 'fail',
    value: -3.5,
    says: expect.stringMatching(/^the metal, with its power taken off at 3\.0 °C, is 3\.5 K below the dew point at the worst end:/),
    change: 'take a thermostat that opens and closes above the dew point'
  })
  expect(asked(surfaceWet, warmed({ ...held, onC: between(0, 2), onMarginK: between(-6.5, -4.5) }))).toMatchObject({
    verdict: 'fail',
    value: -6.5,
    says: expect.stringMatching(/^the metal, cooled to the 0\.0 °C at which its thermostat closes again, is 6\.5 K below/)
  })
  expect(asked(surfaceWet, warmed({ ...held, cutMarginK: between(20, 24) }))).toMatchObject({
    verdict: 'caution',
    change: 'give warm.thermostat.on'
  })
  expect(asked(surfaceWet, warmed({ ...held, opens: false, cutMarginK: between(90, 94) }))).toMatchObject({ verdict: 'pass', value: 77 })
  expect(asked(surfaceWet, warmed('untold'))).toMatchObject({ verdict: 'caution', change: 'give warm.thermostat' })
})

it('held by a thermostat is a caution at best where what it would settle at is a guess', () => {
  const held = { offC: sharp(20), onC: sharp(10), cutMarginK: sharp(14), onMarginK: sharp(4), opens: true }
  const warmed = { surface: { ...margin(assumed(sharp(77))).surface, held } }
  expectDoubted(surfaceWet, warmed)
  expect(asked(surfaceWet, warmed)).toMatchObject({ value: 4, change: surfaceWet.change })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(surfaceWet, margin(assumed(sharp(3))))
})

it('without what it takes is not judged', () => {
  expectNotJudged(surfaceWet, { surface: { field: 'warm.cooling', measure: 'a thermometer' } }, 'warm.cooling', 'a thermometer')
})
