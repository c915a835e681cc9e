import type { jointFit } from '../../fitting/joint-fit.ts'
import type { Bounded, BoundsOf } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { LEAST_FACTOR, STRONGEST_FACTOR } from '../../rules/typical-strength.ts'

/** So many times what is required lets a joint pass whose casting is typical and whose part is told by its least. */
const SURE_FACTOR = LEAST_FACTOR * STRONGEST_FACTOR

type Joint = BoundsOf<ReturnType<typeof jointFit>>

/**
 * Whether the joint holds, at its worst ends, with so much less engaged: loads that strip, and the torque that would, keep at least the
 * share of the thread that is left, and the casting so much more as lets it pass beside its wall. What is certain here need not be worked
 * out again.
 */
export function loadsToSpare(joint: Joint, engagedMm: Bounded, lessMm: Given, wallFactor: number): boolean {
  const share = 1 - lessMm.high / engagedMm.low
  const { internalStripLoadN, externalStripLoadN, preloadN, highestTorqueNm, torqueNm } = joint
  return (
    share > 0 &&
    isLeft(internalStripLoadN, share * wallFactor, preloadN, LEAST_FACTOR) &&
    isLeft(externalStripLoadN, share, preloadN) &&
    isLeft(highestTorqueNm, share, torqueNm)
  )
}

/** Whether with so much less the part would still break first. */
export function engagementToSpare({ engagementSpareMm, engagementRequiredMm }: Joint, lessMm: Given): boolean {
  return engagementSpareMm === null || engagementSpareMm.low - (SURE_FACTOR - 1) * engagementRequiredMm.high >= lessMm.high
}

function isLeft(holds: Bounded | null, share: number, pulls: Bounded | null, timesFactor = 1): boolean {
  return holds === null || pulls === null || share * holds.low >= timesFactor * pulls.high
}
