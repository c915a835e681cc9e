// table: the hole as found against the greatest minor diameter; the numbers are invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { noDrillFits } from '../../../src/rules/hole/no-drill-fits.ts'
import { asked } from '../../../src/rules/rule.ts'

const subject = (low: number, high: number) => ({
  foundDiameterMm: new Given((low + high) / 2, { low, high, at: ['found-diameter'] }),
  thread: 'M12x1.5',
  minor: { maxMm: 10.676 },
  waysOut: ['an insert', 'another place']
})

it.each([
  ['narrower', 9, 10.6, 'pass'],
  ['as wide as allowed', 10, 10.676, 'pass'],
  ['perhaps too wide', 10.6, 10.7, 'caution'],
  ['too wide', 10.677, 10.7, 'fail']
])('%s', (_, low, high, verdict) => {
  expect(asked(noDrillFits, subject(low, high)).verdict).toBe(verdict)
})

it('says why, and the ways out', () => {
  expect(asked(noDrillFits, subject(10.8, 10.8))).toMatchObject({
    says: 'no drill fits this metal: the hole as found is 10.80 mm wide, a hole for M12x1.5 at most 10.676 mm',
    change: 'an insert; or another place',
    value: 10.8,
    limit: 10.676,
    margin: expect.closeTo(-0.124, 9),
    unit: 'mm',
    at: ['found-diameter']
  })
})
