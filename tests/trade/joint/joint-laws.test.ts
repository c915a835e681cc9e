// Property: laws a joint keeps whatever the numbers.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Plain, plainOf } from '../../../src/formula/given.ts'
import { type Joint, joint } from '../../../src/trade/joint/joint.ts'
import { BY_FRICTION, JOINT } from './example-joint.ts'

const PLAIN = plainOf(JOINT).plain
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const factor = (nutFactor: number) => ({ by: 'nut-factor', nutFactor, bearingDiameterMm: 14.5 }) as const
const run = (change: Partial<Plain<Joint>>) => joint({ ...PLAIN, ...change })

test('preload falls as friction grows', () => {
  fc.assert(
    fc.property(number(0.06, 0.5), number(0.001, 0.1), (nutFactor, more) => {
      expect(run({ friction: factor(nutFactor + more) }).preloadN!).toBeLessThan(run({ friction: factor(nutFactor) }).preloadN!)
    })
  )
})

test('preload falls as either friction grows', () => {
  const plain = plainOf(BY_FRICTION).plain
  fc.assert(
    fc.property(
      number(0.02, 0.5),
      number(0.001, 0.2),
      fc.constantFrom('threadFrictionFactor', 'bearingFrictionFactor'),
      (friction, more, which) => {
        const preload = (value: number) => run({ friction: { ...plain, [which]: value } }).preloadN!
        expect(preload(friction + more)).toBeLessThan(preload(friction))
      }
    )
  )
})

test('more torque never lowers preload, stress or pressure', () => {
  fc.assert(
    fc.property(number(0, 60), number(0, 20), (torqueNm, more) => {
      const [less, greater] = [run({ torqueNm }), run({ torqueNm: torqueNm + more })]
      for (const name of ['preloadN', 'tensionMpa', 'combinedMpa', 'bearingPressureMpa'] as const)
        expect(greater[name]!).toBeGreaterThanOrEqual(less[name]!)
    })
  )
})

test('twist adds to tension, and a bore adds to both', () => {
  fc.assert(
    fc.property(number(0, 8), number(0.01, 1), (boreMm, more) => {
      const [less, greater] = [run({ boreMm }), run({ boreMm: boreMm + more })]
      expect(less.combinedMpa!).toBeGreaterThan(less.tensionMpa!)
      expect(greater.tensionMpa!).toBeGreaterThan(less.tensionMpa!)
      expect(greater.proofTorqueNm!).toBeLessThan(less.proofTorqueNm!)
      expect(greater.engagementRequiredMm).toBeLessThan(less.engagementRequiredMm)
    })
  )
})

test('at the torque where the body reaches proof its combined stress is the proof stress', () => {
  fc.assert(
    fc.property(number(0.08, 0.4), number(100, 900), number(0, 9), (nutFactor, proofMpa, boreMm) => {
      const friction = factor(nutFactor)
      const { proofTorqueNm } = run({ friction, proofMpa, boreMm })
      expect(run({ friction, boreMm, torqueNm: proofTorqueNm }).combinedMpa!).toBeCloseTo(proofMpa, 6)
    })
  )
})

test('at the engagement required the part breaks, in its thread or at a narrower neck, as the casting strips', () => {
  fc.assert(
    fc.property(number(60, 400), number(200, 1200), number(7, 12), (castingShearMpa, tensileMpa, neckMm) => {
      const { engagementRequiredMm } = run({ castingShearMpa, tensileMpa, boreMm: 0, neckMm })
      const { internalStripLoadN } = run({ castingShearMpa, tensileMpa, engagementMm: engagementRequiredMm })
      const leastMm2 = Math.min(PLAIN.thread.stressAreaMm2, (Math.PI / 4) * neckMm ** 2)
      expect(internalStripLoadN / (tensileMpa * leastMm2)).toBeCloseTo(1, 9)
    })
  )
})

test('a joint twice the size has four times the areas and loads', () => {
  const size = number(0.4, 3)
  fc.assert(
    fc.property(size, times => {
      const thread = Object.fromEntries(
        Object.entries(PLAIN.thread).map(([name, value]) => [name, value * (name.endsWith('Mm2') ? times ** 2 : times)])
      ) as unknown as Joint['thread']
      const scaled = run({ thread, engagementMm: PLAIN.engagementMm * times, neckMm: PLAIN.neckMm! * times, boreMm: PLAIN.boreMm! * times })
      const one = run({})
      for (const name of [
        'stressAreaMm2',
        'internalShearAreaMm2',
        'externalShearAreaMm2',
        'internalStripLoadN',
        'externalStripLoadN'
      ] as const)
        expect(scaled[name] / one[name] / times ** 2).toBeCloseTo(1, 9)
      expect(scaled.engagementRequiredMm / one.engagementRequiredMm / times).toBeCloseTo(1, 9)
    })
  )
})

test('highest torque is the least of the four, and names it', () => {
  const ends = {
    'casting strips': 'castingStripTorqueNm',
    'part strips': 'partStripTorqueNm',
    'body reaches proof': 'proofTorqueNm',
    'part breaks': 'breakTorqueNm'
  } as const
  fc.assert(
    fc.property(
      number(20, 400),
      number(100, 1200),
      number(0.5, 20),
      number(0.5, 1.3),
      (castingShearMpa, tensileMpa, engagementMm, share) => {
        const results = run({ castingShearMpa, tensileMpa, proofMpa: share * tensileMpa, engagementMm })
        const torques = Object.values(ends).map(name => results[name]!)
        expect(results.highestTorqueNm).toBe(Math.min(...torques))
        expect(results[ends[results.firstToGive!]]).toBe(results.highestTorqueNm)
      }
    )
  )
})
