// table: engagement beyond that at which the part breaks first, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { engagementShort } from '../../../src/rules/joint/engagement-short.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

it.each([
  ['long enough', between(0.01, 2), 'pass'],
  ['perhaps short', between(-0.01, 2), 'caution'],
  ['far too short', between(-9, -8), 'caution'],
  ['just so long', between(0, 2), 'caution']
])('%s', (_, engagementSpareMm, verdict) => {
  expect(verdictOf(engagementShort, { engagementSpareMm, lacks: null })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(engagementShort, { engagementSpareMm: assumed(between(4, 5)), lacks: null })
})

it('names what is missing', () => {
  expectLacking(engagementShort, { engagementSpareMm: null, lacks: null })
})

it.each([
  ['beside a wall too thin for any factor', { wall: { leftMm: 0.05, shareFactor: null, leastMm: 2.4 } }],
  ['beside a wall that nobody measured', { wall: { leftMm: null, shareFactor: null, leastMm: 2.4 } }],
  ['in a hole wider than its thread allows', { wide: { widestMm: 13.2, minorMaxMm: 12.676, sure: true } }]
])('%s is a caution at best', (_, place) => {
  expect(verdictOf(engagementShort, { engagementSpareMm: between(1, 2), lacks: null, ...place })).toBe('caution')
})
