// property: hole, seat and joint as one chain, its bounds against brute force; the job is invented
import { describe, expect, it } from 'vitest'
import { type JointFit, jointFit } from '../../src/fitting/joint-fit.ts'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given, plainOf } from '../../src/formula/given.ts'
import { NoAnswer } from '../../src/formula/no-answer.ts'
import { stopSetting } from '../../src/trade/hole/stop.ts'
import { jointThread } from '../../src/trade/joint/joint-thread.ts'
import { leavesOf } from '../formula/leaf-paths.ts'
import { about, atCorners, elbow, numberAt } from '../trade/hole/invented.ts'
import { knownThread } from '../trade/thread/known-thread.ts'

const { opening, rest } = elbow()

function fitted(more: Partial<JointFit['part']> = {}): JointFit {
  return {
    hole: { ...opening, ...rest, metalBelowMm: null, needMm: null, tipDepthMm: stopSetting(opening).tipDepthMm },
    part: {
      threadLengthMm: about(15, 0.2),
      overallMm: null,
      stack: [{ thicknessMm: about(1.2, 0.1) }],
      crushMm: about(0.1),
      mouthMm: about(0.8, 0.1),
      undercutMm: null,
      rim: null,
      ...more
    },
    holds: {
      thread: jointThread(knownThread('M12')),
      castingShearMpa: about(150, 10),
      tensileMpa: about(380),
      proofMpa: about(260),
      neckMm: about(10),
      boreMm: about(7, 0.1),
      friction: { by: 'nut-factor', nutFactor: about(0.18, 0.04), bearingDiameterMm: null },
      clampN: about(2000),
      bearing: { faceMm: about(17), holeMm: about(12.5) }
    },
    torque: { settingNm: about(12), errorPercent: about(0, 4) }
  }
}

describe('the chain', () => {
  const tree = fitted()

  // 19.136 − 0.6 − 1.5 · 1.75 = 15.91 mm of thread in the hole; the part has 15 − 1.2 + 0.1 − 0.8 = 13.1 below the countersink.
  it('takes the engagement from tap, part, stack and mouth', () => {
    const { internalShearAreaMm2 } = jointFit(plainOf(tree).plain)
    const perMm = jointFit(plainOf(fitted({ threadLengthMm: about(14, 0.2) })).plain).internalShearAreaMm2
    expect(internalShearAreaMm2 / perMm).toBeCloseTo(13.1 / 12.1, 9)
  })

  it('every worst end is the end over all corners', () => {
    const bounds = boundsOf(tree, jointFit)
    const corners = atCorners(tree, jointFit)
    for (const { path } of leavesOf(corners[0])) {
      const values = corners.map(results => numberAt(results, path) as number)
      const { low, high } = numberAt(bounds, path) as { low: number; high: number }
      const least = Math.min(...values)
      const greatest = Math.max(...values)
      expect(Math.abs(low - least), path.join('.')).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(least)))
      expect(Math.abs(high - greatest), path.join('.')).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(greatest)))
    }
  })

  it('the accuracy of the wrench widens what the part gets', () => {
    const { torqueNm } = boundsOf(tree, jointFit)
    expect([torqueNm!.low, torqueNm!.high]).toEqual([expect.closeTo(11.52, 9), expect.closeTo(12.48, 9)])
  })

  it('what the drill did not reach cannot hold: a deeper countersink, a thicker stack, a shorter part hold less', () => {
    const load = (more: Partial<JointFit['part']>) => jointFit(plainOf(fitted(more)).plain).internalStripLoadN
    for (const more of [{ mouthMm: about(1.5) }, { stack: [{ thicknessMm: about(2) }] }, { threadLengthMm: about(12) }])
      expect(load(more)).toBeLessThan(load({}))
  })

  it('without a torque nothing pulls, and nothing else changes', () => {
    const { torqueNm, preloadN, internalStripLoadN } = jointFit(plainOf({ ...tree, torque: null }).plain)
    expect([torqueNm, preloadN]).toEqual([null, null])
    expect(internalStripLoadN).toBe(jointFit(plainOf(tree).plain).internalStripLoadN)
  })
})

it.each([
  [0.85, /only 0\.05 mm of full thread/],
  [0.2, /no full thread/]
])('a part of %d mm of thread over a stack holds nothing, and that is said', (threadLengthMm, says) => {
  const given = fitted({ threadLengthMm: new Given(threadLengthMm), stack: [], crushMm: about(0), mouthMm: about(0.8) })
  expect(() => jointFit(plainOf(given).plain)).toThrow(NoAnswer)
  expect(() => jointFit(plainOf(given).plain)).toThrow(says)
})
