import type { Given, Plain } from '../../formula/given.ts'
import { recordStep } from '../../formula/working.ts'
import { type Clocking, clocked } from './clocking.ts'
import * as engaged from './engaged.ts'
import * as gap from './gap.ts'
import { onItsRim, type Rim } from './neck-rim.ts'

/** A part with a shoulder in a tapped blind hole. */
export interface Seat {
  readonly pitchMm: Given
  /** On the part: shoulder to the last full thread. */
  readonly threadLengthMm: Given
  /** In the hole: face to the last full thread of the last tap used. */
  readonly threadDepthMm: Given
  /** Thicknesses under the shoulder. */
  readonly stack: readonly Thickness[]
  /** What the whole stack loses at card torque. */
  readonly crushMm: Given
  /** Shoulder to the end of the part, and face to the first thing that end can touch. */
  readonly floor: Floor | null
  /** Depth of the countersink at the mouth: no thread there. */
  readonly mouthMm: Given
  /** Plain length of the part under its shoulder (neck, undercut); null where it is threaded up to there, or nobody knows. */
  readonly undercutMm: Given | null
  /** Null where the part has no neck, one that goes between the threads of the hole, or one that nobody told. */
  readonly rim: Rim | null
  /** Full threads that are to be engaged. */
  readonly needMm: Given | null
  readonly clocking: Clocking | null
}

export interface Thickness {
  readonly thicknessMm: Given
}

export interface Floor {
  readonly overallMm: Given
  readonly floorDepthMm: Given
}

/** What stops the part first: run-out, floor and rim apart, with the stack and without. What was not given comes out null. */
export function seat(seated: Plain<Seat>) {
  const { pitchMm, threadLengthMm, crushMm, clocking } = seated
  const stackMm = seated.stack.reduce((belowMm, { thicknessMm }) => gap.stackMm({ belowMm, layerMm: thicknessMm }), 0)
  const runOut = inRunOut(seated, stackMm)
  const floor = seated.floor === null ? null : overFloor(seated.floor, { stackMm, crushMm })
  const rim = seated.rim === null ? null : onItsRim(seated.rim, { ...seated, stackMm })
  const { leastStackMm, feelGapMm } = stoppedFirst([runOut, floor, rim])
  const shoulderTurns = gap.shoulderTurns({ threadLengthMm, stackMm, pitchMm })
  const clock = clocking === null ? null : clocked(clocking, pitchMm)
  return { stackMm, runOut, floor, rim, shoulderTurns, leastStackMm, feelGapMm, clock, ...engagement(seated, stackMm) }
}

/** How much thread holds, and how thick a stack leaves what is wanted. */
function engagement({ threadLengthMm, threadDepthMm, crushMm, mouthMm, undercutMm, needMm }: Plain<Seat>, stackMm: number) {
  const plainMm = undercutMm === null ? 0 : engaged.plainBelowFaceMm({ undercutMm, stackMm, crushMm })
  const startMm = Math.max(mouthMm, plainMm)
  const partMm = engaged.partBelowFaceMm({ threadLengthMm, stackMm, crushMm, mouthMm: startMm })
  const holeMm = engaged.holeBelowMouthMm({ threadDepthMm, mouthMm: startMm })
  const engagedMm = Math.min(partMm, holeMm)
  recordStep(engaged.ENGAGED, engagedMm, () => 'the lesser of le1 and le2')
  return {
    engagedMm,
    greatestStackMm: needMm === null ? null : engaged.greatestStackMm({ threadLengthMm, crushMm, mouthMm, needMm }),
    engagedMarginMm: needMm === null ? null : engaged.engagedMarginMm({ engagedMm, needMm })
  }
}

function overFloor(
  { overallMm, floorDepthMm }: Plain<Floor>,
  { stackMm, crushMm }: { readonly stackMm: number; readonly crushMm: number }
) {
  return {
    withStackMm: gap.floorGapMm({ floorDepthMm, stackMm, crushMm, overallMm }),
    withoutStackMm: gap.bareFloorGapMm({ floorDepthMm, overallMm }),
    leastStackMm: gap.floorStackMm({ overallMm, floorDepthMm, crushMm })
  }
}

function inRunOut({ threadDepthMm, threadLengthMm, crushMm }: Plain<Seat>, stackMm: number) {
  return {
    withStackMm: gap.runOutGapMm({ threadDepthMm, stackMm, crushMm, threadLengthMm }),
    withoutStackMm: gap.bareRunOutGapMm({ threadDepthMm, threadLengthMm }),
    leastStackMm: gap.runOutStackMm({ threadLengthMm, threadDepthMm, crushMm })
  }
}

interface Stop {
  readonly withoutStackMm: number
  readonly leastStackMm: number
}

/** Of all that is known to stop the part, what does so first. */
function stoppedFirst(stops: readonly (Stop | null)[]) {
  const known = stops.filter(stop => stop !== null)
  const leastStackMm = Math.max(...known.map(stop => stop.leastStackMm))
  recordStep(gap.LEAST_STACK, leastStackMm, () => 'the greatest of t1, t2 and t3, as far as they are known')
  const feelGapMm = Math.max(0, ...known.map(stop => 0 - stop.withoutStackMm))
  recordStep(gap.FEEL_GAP, feelGapMm, () => 'the greatest shortfall of g3, g4 and g6, as far as they are known, nought where there is none')
  return { leastStackMm, feelGapMm }
}
