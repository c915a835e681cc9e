import type { Given, Plain } from '../../formula/given.ts'
import { recordStep } from '../../formula/working.ts'
import { type Clocking, clocked } from './clocking.ts'
import * as engaged from './engaged.ts'
import * as gap from './gap.ts'

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

/** What stops the part first: run-out and floor apart, with the stack and without. What was not given comes out null. */
export function seat(seated: Plain<Seat>) {
  const { pitchMm, threadLengthMm, threadDepthMm, crushMm, clocking } = seated
  const stackMm = seated.stack.reduce((belowMm, { thicknessMm }) => gap.stackMm({ belowMm, layerMm: thicknessMm }), 0)
  const runOut = {
    withStackMm: gap.runOutGapMm({ threadDepthMm, stackMm, crushMm, threadLengthMm }),
    withoutStackMm: gap.bareRunOutGapMm({ threadDepthMm, threadLengthMm })
  }
  const runOutStackMm = gap.runOutStackMm({ threadLengthMm, threadDepthMm, crushMm })
  const floor = seated.floor === null ? null : overFloor(seated.floor, { stackMm, crushMm })
  const leastStackMm = floor === null ? runOutStackMm : greater(runOutStackMm, floor.leastStackMm)
  const shoulderTurns = gap.shoulderTurns({ threadLengthMm, stackMm, pitchMm })
  const feelGapMm = feltMm(runOut.withoutStackMm, floor?.withoutStackMm ?? null)
  const clock = clocking === null ? null : clocked(clocking, pitchMm)
  const { engagedMm, greatestStackMm, engagedMarginMm } = engagement(seated, stackMm)
  return { stackMm, runOut, floor, shoulderTurns, leastStackMm, feelGapMm, clock, engagedMm, greatestStackMm, engagedMarginMm }
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

/** Nought where the shoulder lands. */
function feltMm(runOutMm: number, floorMm: number | null): number {
  const feelGapMm = Math.max(0, -runOutMm, floorMm === null ? 0 : -floorMm)
  recordStep(gap.FEEL_GAP, feelGapMm, () => 'the greater shortfall of g3 and g4, nought where there is none')
  return feelGapMm
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

function greater(runOutStackMm: number, floorStackMm: number): number {
  const leastStackMm = Math.max(runOutStackMm, floorStackMm)
  recordStep(gap.LEAST_STACK, leastStackMm, () => 'the greater of t1 and t2')
  return leastStackMm
}
