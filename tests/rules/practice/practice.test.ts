// table: greatest drops as published
// FAA AC 43.13-1B table 11-6, continuous loads: 14 V system 0.5 V, 28 V system 1 V (read-secondary)
// ABYC E-11, critical circuits: 3 % (read-secondary, quoted by a marine wire maker)
// 3 % for plant, machines and road vehicles: common practice
import { describe, expect, it } from 'vitest'
import { dropLimit, PRACTICE_NAMES, PRACTICES } from '../../../src/rules/practice/practice.ts'

it.each([
  ['aircraft', 14, 0.5, 'V', 'ac-43.13-1b-11-6'],
  ['aircraft', 28, 1, 'V', 'ac-43.13-1b-11-6'],
  ['boat', 12, 3, '%', 'abyc-e-11'],
  ['boat', 24, 3, '%', 'abyc-e-11'],
  ['road', 24, 3, '%', 'practice'],
  ['general', 48, 3, '%', 'practice']
] as const)('%s at %d V: %d %s', (practice, busV, value, unit, source) => {
  const limit = dropLimit(practice, busV)
  expect(limit).toMatchObject({ value, unit })
  expect(limit?.source.id).toBe(source)
})

it.each([5, 18, 48, 115])('aircraft has no limit for a bus of %d V, which is neither system', busV => {
  expect(dropLimit('aircraft', busV)).toBeUndefined()
})

describe.each(PRACTICE_NAMES)('%s', name => {
  const { name: named, says, drop } = PRACTICES[name]

  it('is listed under its name', () => {
    expect(named).toBe(name)
    expect(says).not.toBe('')
  })

  it('has one limit for a bus, not two', () => {
    for (const [i, { fromV, toV, value }] of drop.entries()) {
      expect(fromV).toBeLessThan(toV)
      expect(value).toBeGreaterThan(0)
      if (i > 0) expect(fromV).toBeGreaterThan(drop[i - 1]!.toV)
    }
  })
})
