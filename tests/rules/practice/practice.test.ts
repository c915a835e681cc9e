// table: greatest drops as published
// FAA AC 43.13-1B table 11-6, continuous loads: 14 V system 0.5 V, 28 V system 1 V (read-secondary)
// ABYC E-11, critical circuits: 3 % (read-secondary, quoted by a marine wire maker)
// 3 % for plant, machines and road vehicles: common practice
import { describe, expect, it } from 'vitest'
import { DUTIES, dropLimit, PRACTICES } from '../../../src/rules/practice/practice.ts'
import { PRACTICE_NAMES } from '../../../src/trade/practice-names.ts'

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

// FAA AC 43.13-1B ch. 11 table 11-6: drop-001 and drop-003 read-secondary, drop-002 and drop-004 memory.
it.each([
  { id: 'drop-001', busV: 14, duty: 'continuous', limitV: 0.5, label: 'read-secondary' },
  { id: 'drop-002', busV: 14, duty: 'intermittent', limitV: 1, label: 'memory' },
  { id: 'drop-003', busV: 28, duty: 'continuous', limitV: 1, label: 'read-secondary' },
  { id: 'drop-004', busV: 28, duty: 'intermittent', limitV: 2, label: 'memory' }
] as const)('$id aircraft, $busV V, $duty: $limitV V', ({ busV, duty, limitV, label }) => {
  expect(dropLimit('aircraft', busV, duty)).toMatchObject({ unit: 'V', value: limitV, source: { label } })
})

// ABYC E-11 as quoted by a marine wire maker (read-secondary): 3 % critical, 10 % others.
it('a boat: 3 % for critical circuits, 10 % for others, which is never taken unasked', () => {
  for (const duty of ['continuous', 'intermittent'] as const)
    expect(dropLimit('boat', 12, duty)).toMatchObject({ unit: '%', value: 3, source: { label: 'read-secondary' } })
  expect(PRACTICES.boat.looser).toMatchObject({ percent: 10, source: { label: 'read-secondary' } })
})

describe.each(PRACTICE_NAMES)('%s', name => {
  const { name: named, says, drop } = PRACTICES[name]

  it('is listed under its name', () => {
    expect(named).toBe(name)
    expect(says).not.toBe('')
  })

  it.each(DUTIES)('has one limit for a bus and a %s load, not two', duty => {
    const rows = drop.filter(row => row.duty === 'any' || row.duty === duty)
    for (const [i, { fromV, toV, value }] of rows.entries()) {
      expect(fromV).toBeLessThan(toV)
      expect(value).toBeGreaterThan(0)
      if (i > 0) expect(fromV).toBeGreaterThan(rows[i - 1]!.toV)
    }
  })
})
