// Property: worst corners of one invented joint by brute force; the root sum of squares lies inside the worst case.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Bounded, boundsOf } from '../../../src/formula/bounds.ts'
import { type Given, plainOf } from '../../../src/formula/given.ts'
import { type Joint, joint } from '../../../src/trade/joint/joint.ts'
import { BY_FACTOR, BY_FRICTION, JOINT, within } from './example-joint.ts'

const isBounded = (value: unknown): value is Bounded => typeof value === 'object' && value !== null && 'low' in value

function bounded(given: Joint): readonly (readonly [string, Bounded])[] {
  return Object.entries(boundsOf(given, joint)).flatMap(([name, value]) => (isBounded(value) ? [[name, value] as const] : []))
}

/** Every corner of the bounds: each input at either end. */
function corners(given: Joint): readonly Record<string, unknown>[] {
  const ends = plainOf(given).slots.map(({ given }) => [given.low, given.high])
  const all = ends.reduce<number[][]>((sofar, pair) => sofar.flatMap(values => pair.map(end => [...values, end])), [[]])
  return all.map(values => joint(plainOf(given, values).plain))
}

describe.each([
  ['nut factor', { ...JOINT, friction: BY_FACTOR }],
  ['friction', { ...JOINT, friction: BY_FRICTION }],
  ['strips first', { ...JOINT, proofMpa: null, boreMm: null }]
] as const)('%s', (_, given) => {
  const all = corners(given)
  test.each(bounded(given))('%s', (name, { low, high, turned }) => {
    const values = all.map(results => results[name] as number)
    expect(turned).toEqual([])
    expect(Math.abs(Math.min(...values) - low)).toBeLessThanOrEqual(1e-9 * Math.abs(low))
    expect(Math.abs(Math.max(...values) - high)).toBeLessThanOrEqual(1e-9 * Math.abs(high))
  })
})

test('the worst case contains the root sum of squares', () => {
  const percent = fc.double({ min: 0, max: 3, noNaN: true })
  fc.assert(
    fc.property(fc.array(percent, { minLength: 4, maxLength: 4 }), ([a, b, c, d]) => {
      const given = {
        ...JOINT,
        engagementMm: within(9.4, a!),
        castingShearMpa: within(190, b!),
        torqueNm: within(9, c!),
        boreMm: within(7, d!)
      }
      for (const [name, { low, high, rss }] of bounded(given)) {
        expect(low, name).toBeLessThanOrEqual(rss[0] * (1 + 1e-12))
        expect(high, name).toBeGreaterThanOrEqual(rss[1] * (1 - 1e-12))
      }
    }),
    { numRuns: 15 }
  )
})

test('a result hangs on what was assumed, and on nothing else', () => {
  const nutFactor: Given = within(0.17, 10, 'a usual nut factor')
  const { highestTorqueNm, internalStripLoadN } = boundsOf(
    { ...JOINT, friction: { ...BY_FACTOR, by: 'nut-factor', nutFactor } } as Joint,
    joint
  )
  expect(highestTorqueNm?.hangsOn).toEqual([nutFactor])
  expect(internalStripLoadN.hangsOn).toEqual([])
})
