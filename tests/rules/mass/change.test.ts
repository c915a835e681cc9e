// table: what is put on and taken off against what is negligible, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { change } from '../../../src/rules/mass/change.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, sharp, verdictOf } from '../bounded.ts'

const negligible = { value: 0.45 }

it.each([
  ['below at the worst end', between(0.3, 0.44), 'pass'],
  ['above at the worst end', between(0.3, 0.46), 'caution'],
  ['much more', sharp(30), 'caution'],
  ['just that', sharp(0.45), 'caution']
])('%s', (_, movedKg, verdict) => {
  expect(verdictOf(change, { movedKg, negligible })).toBe(verdict)
})

it('says how much, and whose figure it is', () => {
  expect(asked(change, { movedKg: sharp(0.3), negligible }).says).toMatch(/^0\.300 kg put on and taken off; 0\.450 kg .* aircraft/)
})

it('above the table is a caution, in words', () => {
  expect(asked(change, { movedKg: sharp(0.3), negligible: null })).toMatchObject({
    verdict: 'caution',
    value: null,
    source: 'ac-43.13-1b-10-2'
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(change, { movedKg: assumed(sharp(0.1)), negligible })
})
