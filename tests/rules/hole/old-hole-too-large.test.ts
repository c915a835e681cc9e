// table: what the drill opens of the old hole against nought; the numbers are invented, the limits printed (ISO 965-2, M12x1.5-6H: 10.376 to 10.676)
import { expect, it } from 'vitest'
import type { Bounded } from '../../../src/formula/bounds.ts'
import { oldHoleTooLarge } from '../../../src/rules/hole/old-hole-too-large.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, sharp, verdictOf } from '../bounded.ts'

const around = (openingMm: Bounded, foundHighMm: number, truingDrill: string | null = null) => ({
  openingMm,
  drillMm: sharp(10.5),
  foundLowMm: foundHighMm - 0.05,
  foundHighMm,
  truingDrill,
  thread: 'M12x1.5',
  minor: { minMm: 10.376, maxMm: 10.676 },
  waysOut: ['an insert', 'another place']
})

it.each([
  ['a drill that cuts all round', between(0.01, 0.4), 10.7, 'pass'],
  ['a drill that may pass through', between(-0.01, 0.4), 10.7, 'fail'],
  ['a drill of the size of the hole', between(0, 0.4), 10.7, 'caution'],
  ['a drill that may pass through a hole at tapping size', between(-0.05, 0.05), 10.53, 'caution'],
  ['one that does', between(-0.2, -0.1), 10.676, 'caution'],
  ['one that does, a thousandth beyond the limits', between(-0.2, -0.1), 10.677, 'fail']
])('%s', (_, openingMm, foundHighMm, verdict) => {
  expect(verdictOf(oldHoleTooLarge, around(openingMm, foundHighMm))).toBe(verdict)
})

it('with an assumed drill is a caution at best', () => {
  expectDoubted(oldHoleTooLarge, around(assumed(between(2, 3)), 9))
})

it('names the ways out', () => {
  expect(asked(oldHoleTooLarge, around(between(-1, -0.5), 11)).change).toBe('an insert; or another place')
})

// 10.3 mm found, 10.376 asked for: a drill of 10.2 opens nothing and leaves it too narrow for the tap.
it('below the limits it is not at tapping size, and the drill that trues it is named', () => {
  const narrow = { ...around(between(-0.1, -0.05), 10.3, '10.4 mm'), drillMm: sharp(10.2) }
  expect(asked(oldHoleTooLarge, narrow)).toMatchObject({
    verdict: 'fail',
    says: expect.not.stringContaining('tapping size'),
    change: 'take the drill 10.4 mm: it opens the hole all round and stays inside the limits'
  })
  // Where the drill cuts, it makes what is narrower as wide as itself.
  expect(verdictOf(oldHoleTooLarge, { ...around(between(-0.05, 0.2), 10.55), foundLowMm: 10.3 })).toBe('caution')
})

it('at tapping size it names no other thread, but the drill that trues the hole, where there is one', () => {
  expect(asked(oldHoleTooLarge, around(between(-0.05, 0.15), 10.55, '10.6 mm'))).toMatchObject({
    says: expect.stringContaining('up to 10.55 mm wide, at tapping size already (M12x1.5 asks for 10.376 to 10.676 mm)'),
    change: 'take the drill 10.6 mm: it opens the hole all round and stays inside the limits'
  })
  expect(asked(oldHoleTooLarge, around(between(-0.05, 0.15), 10.67)).change).toContain('it is what will be tapped')
})
