// Table: one invented joint, every number worked out apart from the program (polar moment of the ring, cos 30°), to six figures.
import { describe, expect, test } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { plainOf } from '../../../src/formula/given.ts'
import { type Joint, joint } from '../../../src/trade/joint/joint.ts'
import { BARE, BY_FRICTION, JOINT, within } from './example-joint.ts'

const run = (given: Joint) => joint(plainOf(given).plain)

function expectNear(results: Record<string, unknown>, expected: Record<string, number>) {
  for (const [name, value] of Object.entries(expected)) expect(Math.abs(Number(results[name]) / value - 1), name).toBeLessThan(2e-6)
}

test('strength of both threads', () => {
  expectNear(run(JOINT), {
    stressAreaMm2: 88.125976,
    internalShearAreaMm2: 242.03805,
    externalShearAreaMm2: 179.23636,
    internalStripLoadN: 45987.229,
    externalStripLoadN: 38715.053,
    engagementRequiredMm: 3.6528994
  })
})

test('by nut factor', () => {
  expectNear(run(JOINT), {
    preloadN: 4411.7647,
    tensionMpa: 119.41397,
    combinedMpa: 133.82977,
    bearingPressureMpa: 42.314375,
    lowestTorqueNm: 5.1,
    castingStripTorqueNm: 93.813947,
    partStripTorqueNm: 78.978708,
    proofTorqueNm: 16.812403,
    highestTorqueNm: 16.812403,
    // The differences of the figures above.
    castingMarginN: 45987.229 - 4411.7647,
    partMarginN: 38715.053 - 4411.7647,
    bodyMarginMpa: 250 - 133.82977
  })
  expect(run(JOINT).firstToGive).toBe('body reaches proof')
})

test('by the friction of thread and bearing', () => {
  expectNear(run({ ...JOINT, friction: BY_FRICTION }), {
    preloadN: 3696.2035,
    tensionMpa: 100.04576,
    combinedMpa: 113.17927,
    lowestTorqueNm: 6.0873272,
    proofTorqueNm: 19.879966
  })
})

describe('what was not given is left out', () => {
  test('without friction nothing follows from torque', () => {
    const {
      stressAreaMm2,
      internalShearAreaMm2,
      externalShearAreaMm2,
      internalStripLoadN,
      externalStripLoadN,
      engagementRequiredMm,
      engagementSpareMm,
      ...rest
    } = run({ ...BARE, torqueNm: JOINT.torqueNm, clampN: JOINT.clampN })
    expect([stressAreaMm2, internalShearAreaMm2, externalShearAreaMm2, internalStripLoadN, externalStripLoadN].every(x => x > 0)).toBe(true)
    expect(engagementRequiredMm).toBeGreaterThan(run(JOINT).engagementRequiredMm)
    expect(engagementSpareMm).toBeCloseTo(9.4 - engagementRequiredMm, 9)
    expect(new Set(Object.values(rest))).toEqual(new Set([null]))
  })
  test('without proof the body is not judged: a strip comes first', () => {
    const results = run({ ...JOINT, proofMpa: null })
    expect([results.proofTorqueNm, results.firstToGive]).toEqual([null, 'part strips'])
    expect(results.highestTorqueNm).toBe(results.partStripTorqueNm)
  })
  test('a soft casting strips first', () => {
    expect(run({ ...JOINT, proofMpa: null, castingShearMpa: within(20, 0) }).firstToGive).toBe('casting strips')
  })
  test('without torque no preload, without clamp no lowest torque', () => {
    const { preloadN, tensionMpa, combinedMpa, bearingPressureMpa, lowestTorqueNm, highestTorqueNm } = run({
      ...JOINT,
      torqueNm: null,
      clampN: null
    })
    expect([preloadN, tensionMpa, combinedMpa, bearingPressureMpa, lowestTorqueNm]).toEqual([null, null, null, null, null])
    expect(highestTorqueNm).toBe(run(JOINT).highestTorqueNm)
  })
})

test('a neck wider than the thread changes nothing', () => {
  const thread = run({ ...JOINT, neckMm: null })
  expect(run({ ...JOINT, neckMm: within(11, 0) })).toEqual(thread)
  expect(thread.tensionMpa).toBeLessThan(run(JOINT).tensionMpa!)
})

test('no bore is a bore of nought', () => {
  expect(run({ ...JOINT, boreMm: null })).toEqual(run({ ...JOINT, boreMm: within(0, 0) }))
})

test('bounds leave nulls and words alone', () => {
  const { proofTorqueNm, firstToGive } = boundsOf({ ...JOINT, proofMpa: null }, joint)
  expect([proofTorqueNm, firstToGive]).toEqual([null, 'part strips'])
})
