import type { Given } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { showApart } from '../../quantity/show.ts'
import { basicSizes } from '../thread/basic.ts'
import { mouthAcrossMm, USUAL_MOUTH_DEG } from '../thread/mouth-chamfer.ts'
import type { Thread } from '../thread/thread.ts'
import { majorLimits } from '../thread/thread-results.ts'
import { neckRoomMm } from './neck-rim.ts'

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

/** A plain length under the shoulder that leaves no thread. */
export function allPlain(undercutMm: Given, threadLengthMm: Given): string | null {
  return undercutMm.low >= threadLengthMm.high ? 'a part that is plain down to where its thread ends' : null
}

/** What lies under the shoulder goes over the neck too. */
export function belowNeck(holeMm: Given, neckMm: Given): string | null {
  return holeMm.high < neckMm.low ? `a hole of ${holeMm.value} mm, which does not go over the neck of ${neckMm.value} mm` : null
}

/** A neck under its shoulder, and the hole it goes into. */
export interface Necked {
  readonly neckMm: Given
  /** Null where nobody told how long it is. */
  readonly undercutMm: Given | null
  readonly stack: readonly Given[]
  readonly crushMm: Given
  /** Between the crests of the thread in the hole. */
  readonly clearMm: number
  readonly mouthMm: Given
  readonly thread: Thread
}

/** A neck that does not go between the threads of its hole stands on their rim before the shoulder lands. */
export function onRim({ neckMm, undercutMm, stack, crushMm, clearMm, mouthMm, thread }: Necked): string | null {
  if (neckMm.high <= clearMm) return null
  const [neck, hole] = showApart(neckMm.high, clearMm, 'length')
  const wide = `a neck of ${neckMm.high > neckMm.value ? 'up to ' : ''}${neck} mm in a hole ${hole} mm wide`
  if (undercutMm === null) return isThread(neckMm, thread) ? null : `${wide}, and no word of its length`
  const belowMm = undercutMm.high + crushMm.high - stack.reduce((sum, { low }) => sum + low, 0)
  const gapMm = belowMm - roomFor(neckMm, mouthMm, thread)
  return gapMm > HAIR_MM ? `${wide}: it stands on the rim, ${seen(gapMm)} mm before the shoulder lands` : null
}

/** Less is nothing but the last digit of a sum. */
const HAIR_MM = 1e-9

/** A part that has no neck was measured over its crests, which are a little narrower than the size of the thread. */
function isThread({ value, low }: Given, thread: Thread): boolean {
  return value >= majorLimits(thread).minMm && low <= thread.majorMm
}

/** How deep the mouth takes a neck, until it stands on the cone; one wider than the mouth, however wide, stands on the face. */
function roomFor(neckMm: Given, mouthMm: Given, thread: Thread): number {
  const minorMm = basicSizes(thread).minorDiameterMm
  if (neckMm.high >= minorMm + 2 * mouthMm.low) return 0
  return silently(() => neckRoomMm({ mouthMm: mouthMm.low, neckMm: neckMm.high, minorMm }))
}

/** Hundredths, and as many digits more as it takes to see that it is something. */
function seen(mm: number): string {
  return mm.toFixed(Math.max(2, Math.ceil(-Math.log10(mm))))
}

/** A shoulder that goes into the thread lands on nothing. */
export function narrowShoulder(shoulderMm: Given, { majorMm, name }: Thread): string | null {
  return shoulderMm.high <= majorMm ? `a shoulder of ${shoulderMm.value} mm, no wider than the thread ${name}` : null
}

/** A mouth as wide as the shoulder leaves it nothing to stand on. */
export function swallowed(mouthMm: Given, shoulderMm: Given, thread: Thread): string | null {
  const acrossMm = mouthAcross(mouthMm.low, thread)
  return acrossMm >= shoulderMm.high ? `a mouth ${acrossMm.toFixed(1)} mm across under a shoulder of ${shoulderMm.value} mm` : null
}

/** At the face, cut with the usual countersink. */
export function mouthAcross(mouthMm: number, thread: Thread): number {
  return silently(() => mouthAcrossMm({ minorMm: basicSizes(thread).minorDiameterMm, mouthMm, angleDeg: USUAL_MOUTH_DEG }))
}
