// example: arithmetic by hand from the published tables.

import { expect, it } from 'vitest'
import { wireLimit } from '../../../src/trade/circuit/protection-wire-limit.ts'
import type { PracticeName } from '../../../src/trade/practice-names.ts'

const wire = (practice: PracticeName, awg: number, kind: 'fuse' | 'breaker' = 'fuse') => ({
  practice,
  kind,
  conductor: { standard: 'awg', awg } as const,
  insulationC: 105,
  ambientC: 50,
  altitudeM: 0,
  bundleCount: 5
})

it('takes the engine space first and leaves the bundle out in a boat', () => {
  // 1.5 · 35 · 0.85 = 44.625 as the ceiling; 35 · 0.85 · 0.6 = 17.85 against overload.
  const limit = wireLimit(wire('boat', 14))
  expect(limit.wireLimitA).toBeCloseTo(44.625, 9)
  expect(limit.overloadA).toBeCloseTo(17.85, 9)
  expect(limit.says).toContain('not protected against overload')
})

it('shows what the aircraft table allows beside what the wire carries in its bundle', () => {
  expect(wireLimit(wire('aircraft', 14, 'breaker'))).toMatchObject({ wireLimitA: 20, overloadA: 10 })
  expect(wireLimit(wire('aircraft', 14))).toMatchObject({ wireLimitA: 15, overloadA: 10 })
})

it('has no figure where the aircraft table has none', () => {
  expect(wireLimit(wire('aircraft', 24)).wireLimitA).toBeNull()
  expect(wireLimit(wire('aircraft', 1, 'breaker')).wireLimitA).toBeNull()
  expect(wireLimit(wire('aircraft', 1)).wireLimitA).toBe(150)
})

it('is what the wire carries in general work', () => {
  const limit = wireLimit(wire('general', 14))
  expect(limit.wireLimitA).toBe(limit.overloadA)
  expect(limit.wireLimitA).toBeCloseTo(17.85, 9)
})

it('has no figure for a wire that no table holds', () => {
  expect(wireLimit(wire('boat', 22))).toMatchObject({ wireLimitA: null, overloadA: null })
})
