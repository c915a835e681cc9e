// table: the clearance of a tap less what the hole may be short, against nought; the numbers are invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { tapMeetsEnd } from '../../../src/rules/hole/tap-meets-end.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'

const clear = (value: number, spread = 0) => new Given(value, { low: value - spread, high: value + spread })

// Full diameter ends at 20 mm, give or take the error: what is left is the clearance less that error.
it.each([
  ['0.3 mm clear of a stop true within 0.2 mm', 0.2, clear(0.3), 'pass', 0.1],
  ['as much as the error', 0.5, clear(0.5), 'caution', 0],
  ['less than the error', 0.4, clear(0.3), 'fail', -0.1],
  ['a clearance that is itself not known', 0.2, clear(0.3, 0.2), 'fail', -0.1],
  ['no clearance, and a stop without error', 0, clear(0), 'caution', 0]
])('%s', (_, error, tapClearMm, verdict, marginMm) => {
  const finding = asked(tapMeetsEnd, { fullDiameterDepthMm: between(20 - error, 20 + error), tapClearMm })
  expect(finding).toMatchObject({ verdict, unit: 'mm' })
  expect(finding.margin).toBeCloseTo(marginMm, 9)
})

it('points at what was measured', () => {
  expect(asked(tapMeetsEnd, { fullDiameterDepthMm: between(19, 21), tapClearMm: clear(0.5) }).at).toEqual(['holes', 'left', 'measured'])
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tapMeetsEnd, { fullDiameterDepthMm: assumed(between(19.9, 20.1)), tapClearMm: clear(1) })
  const guessed = new Given(1.5, { assumed: 'default: one pitch', at: ['tools', 'tap-clear'] })
  expect(verdictOf(tapMeetsEnd, { fullDiameterDepthMm: between(19.9, 20.1), tapClearMm: guessed })).toBe('caution')
})
