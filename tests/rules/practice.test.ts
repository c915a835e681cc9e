// table: limits of drop against the figures of their sources, source and label beside each
import { expect, it } from 'vitest'
import { dropLimit, PRACTICES } from '../../src/rules/practice/practice.ts'

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

it('aircraft figures are not stretched to other systems', () => {
  expect(dropLimit('aircraft', 18)).toBeUndefined()
  expect(dropLimit('aircraft', 48, 'intermittent')).toBeUndefined()
})
