import type { Given } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { basicSizes } from '../thread/basic.ts'
import { mouthAcrossMm, USUAL_MOUTH_DEG } from '../thread/mouth-chamfer.ts'
import type { Thread } from '../thread/thread.ts'

// Lengths that cannot be those of one part, or of one stack, in words; null where they can.

export function shortPart(overallMm: Given, threadLengthMm: Given): string | null {
  return overallMm.high < threadLengthMm.low ? 'a part that ends before its thread does' : null
}

export function crushedAway(crushMm: Given, stack: readonly Given[]): string | null {
  const thinnestMm = stack.reduce((sum, { low }) => sum + low, 0)
  if (!(crushMm.high > thinnestMm)) return null
  return crushMm.value > thinnestMm ? 'a stack that loses more than it has' : 'a stack that may lose more than it has'
}

/** What lies under the shoulder goes over the thread, or it is filed open at the bench. */
export function belowThread(holeMm: Given, { majorMm, name }: Thread): string | null {
  return holeMm.high < majorMm ? `a hole of ${holeMm.value} mm, which does not go over the thread ${name}` : null
}

/** A mouth as wide as the shoulder leaves it nothing to stand on. */
export function swallowed(mouthMm: Given, shoulderMm: Given, thread: Thread): string | null {
  // What is no countersink at all is told where it is worked with.
  const [, least, greatest] = mouthAcrossMm.inputs.mouthMm
  if (!(mouthMm.low >= least && mouthMm.low <= greatest)) return null
  const acrossMm = mouthAcross(mouthMm.low, thread)
  return acrossMm >= shoulderMm.high ? `a mouth ${acrossMm.toFixed(1)} mm across under a shoulder of ${shoulderMm.value} mm` : null
}

/** At the face, cut with the usual countersink. */
export function mouthAcross(mouthMm: number, thread: Thread): number {
  return silently(() => mouthAcrossMm({ minorMm: basicSizes(thread).minorDiameterMm, mouthMm, angleDeg: USUAL_MOUTH_DEG }))
}
