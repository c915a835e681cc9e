// table: engagement beyond that at which the part breaks first, never a fail; the numbers are invented
import { expect, it } from 'vitest'
import { engagementShort } from '../../../src/rules/joint/engagement-short.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const KNOWN = { engagementRequiredMm: between(5, 6), typical: false, leastOfPart: false, lacks: null }

it.each([
  ['long enough', between(0.01, 2), 'pass'],
  ['perhaps short', between(-0.01, 2), 'caution'],
  ['far too short', between(-9, -8), 'caution'],
  ['just so long', between(0, 2), 'caution']
])('%s', (_, engagementSpareMm, verdict) => {
  expect(verdictOf(engagementShort, { engagementSpareMm, ...KNOWN })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(engagementShort, { engagementSpareMm: assumed(between(4, 5)), ...KNOWN })
})

it('names what is missing', () => {
  expectLacking(engagementShort, { engagementSpareMm: null, ...KNOWN })
})

it.each([
  ['beside a wall too thin for any factor', { wall: { leftMm: 0.05, shareFactor: null, leastMm: 2.4 } }],
  ['beside a wall that nobody measured', { wall: { leftMm: null, shareFactor: null, leastMm: 2.4 } }],
  ['in a hole wider than its thread allows', { wide: { widestMm: 13.2, minorMaxMm: 12.676, sure: true } }]
])('%s is a caution at best', (_, place) => {
  expect(verdictOf(engagementShort, { engagementSpareMm: between(1, 2), ...KNOWN, ...place })).toBe('caution')
})

// 6 mm are required at most: half as much again is 3 mm to spare, a fifth more 1.2 mm (VDI 2230, memory), both together 1.8 times: 4.8 mm.
it.each([
  [2.99, { typical: true }, 'caution', /less than 1\.5 times what that takes, and the strength is that of cast bars/],
  [3, { typical: true }, 'pass', /./],
  [2.99, {}, 'pass', /./],
  [
    1.19,
    { leastOfPart: true },
    'caution',
    /less than 1\.2 times what that takes, and the part may be 1\.2 times as strong as its least \(VDI 2230, memory\)/
  ],
  [4.79, { typical: true, leastOfPart: true }, 'caution', /less than 1\.8 times .* cast bars.* its least/],
  [4.81, { typical: true, leastOfPart: true }, 'pass', /./],
  [1.2, { leastOfPart: true }, 'pass', /./]
])('%d mm to spare with %j: %s', (low, doubts, verdict, says) => {
  expect(asked(engagementShort, { ...KNOWN, engagementSpareMm: between(low, 5), ...doubts })).toMatchObject({
    verdict,
    says: expect.stringMatching(says)
  })
})
