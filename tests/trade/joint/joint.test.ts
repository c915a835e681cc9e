// Table: one invented joint, every number worked out apart from the program (polar moment of the ring, cos 30°), to six figures.
import { describe, expect, test } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, plainOf } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { type Joint, joint } from '../../../src/trade/joint/joint.ts'
import { BARE, BY_FACTOR, BY_FRICTION, JOINT, within } from './example-joint.ts'

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
    // It breaks at its neck: π/4·(9.8² − 7²) = 36.9451 mm² · 360 MPa = 13300.2 N, over 242.03805/9.4 mm · 190 MPa.
    engagementRequiredMm: 2.7186312
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
    // The same stress by the same formula, at 360 MPa in place of 250 MPa.
    breakTorqueNm: 16.812403 * (360 / 250),
    // The differences of the figures above.
    castingMarginN: 45987.229 - 4411.7647,
    partMarginN: 38715.053 - 4411.7647,
    bodyMarginMpa: 250 - 133.82977,
    breakMarginMpa: 360 - 133.82977
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

test('without a neck, or behind one wider than the thread, the part breaks in the thread: 88.125976 − π/4·7² = 49.6415 mm²', () => {
  for (const neckMm of [null, within(12, 1)]) expectNear(run({ ...JOINT, neckMm }), { engagementRequiredMm: 3.6528994 })
})

test('of what ends the ring inside the widest counts, at the nominal and at each end', () => {
  // Hole 12.5 sharp, mouth 12.4 ± 0.4: nominal 12.5, at most 12.8.
  const bearing = { faceMm: new Given(17), holeMm: new Given(12.5), alsoMm: [new Given(12.4, { low: 12, high: 12.8 })] }
  const { bearingPressureMpa } = boundsOf(
    { ...JOINT, torqueNm: new Given(9), friction: { ...BY_FACTOR, nutFactor: new Given(0.17) }, bearing },
    joint
  )
  // 9/(0.17 · 0.012) = 4411.7647 N over π/4·(17² − 12.5²) = 104.2610 mm², and over π/4·(17² − 12.8²) = 98.3001 mm².
  expect(bearingPressureMpa!.value).toBeCloseTo(42.3146, 3)
  expect(bearingPressureMpa!.high).toBeCloseTo(44.8806, 3)
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
  test('without proof the body counts when it breaks', () => {
    const results = run({ ...JOINT, proofMpa: null })
    expect([results.proofTorqueNm, results.bodyMarginMpa, results.firstToGive]).toEqual([null, null, 'part breaks'])
    expect(results.highestTorqueNm).toBe(results.breakTorqueNm)
  })
  test('a soft casting strips first', () => {
    expect(run({ ...JOINT, proofMpa: null, castingShearMpa: within(20, 0) }).firstToGive).toBe('casting strips')
  })
  test('little thread in a thick part strips first', () => {
    const short = run({ ...JOINT, proofMpa: null, neckMm: null, boreMm: null, castingShearMpa: within(400, 0), engagementMm: within(3, 0) })
    expect(short.firstToGive).toBe('part strips')
  })
  test('without torque no preload, without clamp no lowest torque', () => {
    const { preloadN, tensionMpa, combinedMpa, bearingPressureMpa, lowestTorqueNm, ...rest } = run({
      ...JOINT,
      torqueNm: null,
      clampN: null
    })
    expect([preloadN, tensionMpa, combinedMpa, bearingPressureMpa, lowestTorqueNm]).toEqual([null, null, null, null, null])
    expect([rest.castingMarginN, rest.partMarginN, rest.bodyMarginMpa, rest.breakMarginMpa]).toEqual([null, null, null, null])
    expect(rest.highestTorqueNm).toBe(run(JOINT).highestTorqueNm)
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

// (17 + 12.5)/2 = 14.75 mm.
test('the ring that bears gives the mean diameter, where none is given', () => {
  const bearing = (bearingDiameterMm: number | null) =>
    run({ ...JOINT, friction: { ...BY_FRICTION, bearingDiameterMm: bearingDiameterMm === null ? null : within(bearingDiameterMm, 0) } })
  expect(bearing(null)).toEqual(bearing(14.75))
})

test('without a ring that bears there is no pressure, and all else is as it was', () => {
  expect(run({ ...JOINT, bearing: null })).toEqual({ ...run(JOINT), bearingPressureMpa: null })
})

test('the working of the highest torque names what gives', () => {
  const { value, working } = withWorking(() => run(JOINT))
  const highest = working.find(({ symbol }) => symbol === 'Tmax')
  expect(highest).toMatchObject({ putIn: 'body reaches proof', value: value.highestTorqueNm })
})

test('bounds leave nulls and words alone', () => {
  const { proofTorqueNm, firstToGive } = boundsOf({ ...JOINT, proofMpa: null }, joint)
  expect([proofTorqueNm, firstToGive]).toEqual([null, 'part breaks'])
})

// M12x1.5, 360 MPa, neck 10 mm, bore 7 mm, K = 0.14, by hand: arm 1.68 mm, friction (1.68 - 0.2387)/(6.366 + 7.5) = 0.1039,
// arm in the thread 0.9004 mm, ring 40.06 mm² and π/16·(10^4 - 7^4)/10 = 149.2 mm³: 0.02707 MPa a newton, 13.30 kN, 22.3 N·m.
test('a hollow part breaks at 22.3 N·m, however much thread is engaged', () => {
  const friction: Joint['friction'] = { by: 'nut-factor', nutFactor: within(0.14, 0), bearingDiameterMm: within(15, 0) }
  const deep = { ...JOINT, friction, proofMpa: null, tensileMpa: within(360, 0), neckMm: within(10, 0), boreMm: within(7, 0) }
  const { highestTorqueNm, firstToGive } = run({ ...deep, engagementMm: within(30, 0) })
  expect(firstToGive).toBe('part breaks')
  expect(highestTorqueNm).toBeCloseTo(22.35, 1)
})
