// table: a reading against the band that a circuit in order may show; the numbers are invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { outOfBand } from '../../../src/rules/prove/out-of-band.ts'
import { asked } from '../../../src/rules/rule.ts'

const subject = { takes: 'volts', at: 'left+ to left-', low: 26, high: 27, hangsOn: [], path: ['readings', 0, 'volts'] } as const

it.each([
  ['inside', 26.4, 'pass'],
  ['just below the upper end', 26.99, 'pass'],
  ['on the lower end', 26, 'caution'],
  ['on the upper end', 27, 'caution'],
  ['below', 25.9, 'fail'],
  ['above', 27.1, 'fail']
])('%s', (_, value, verdict) => {
  expect(asked(outOfBand, { ...subject, value }).verdict).toBe(verdict)
})

it('says which reading, and both ends; the nearer end is the limit', () => {
  const finding = asked(outOfBand, { ...subject, value: 25.5 })
  expect(finding.says).toContain('volts left+ to left-: 25.50 V, 26.00 V to 27.00 V expected')
  expect(finding).toMatchObject({ value: 25.5, limit: 26, unit: 'V', at: subject.path })
  expect(finding.margin).toBeCloseTo(-0.5, 12)
})

it('a band that hangs on an assumed meter lets no reading pass, and asks for the meter', () => {
  const finding = asked(outOfBand, {
    ...subject,
    value: 26.5,
    hangsOn: [new Given(0.5, { assumed: 'default: a typical meter', at: ['proof', 'meter', 'volts'] })]
  })
  expect(finding.verdict).toBe('caution')
  expect(finding.says).toContain('proof.meter.volts')
  expect(finding.change).toContain('give what was assumed')
})

it.each([
  ['amps', 'A'],
  ['ohms', 'ohm']
] as const)('%s are told in %s', (takes, unit) => {
  expect(asked(outOfBand, { ...subject, takes, value: 26.5 }).unit).toBe(unit)
})

it('what a meter shows that finds no end is told as it shows it', () => {
  // Six hundred times a hundred kilohm is where a meter stops.
  const open = { ...subject, takes: 'ohms', low: 9.16, high: 10.3, value: 6e7 } as const
  expect(asked(outOfBand, open).says).toMatch(/: OL, 9\.16 ohm to 10\.3 ohm expected/)
  expect(asked(outOfBand, { ...open, low: 6e7, high: 6e7, value: 9 }).says).toMatch(/, OL to OL expected/)
})
