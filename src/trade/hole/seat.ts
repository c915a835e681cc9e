import type { Given, Plain } from '../../formula/given.ts'
import { recordStep } from '../../formula/working.ts'
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
}

export interface Thickness {
  readonly thicknessMm: Given
}

export interface Floor {
  readonly overallMm: Given
  readonly floorDepthMm: Given
}

/** What stops the part first: run-out and floor apart, with the stack and without. Nothing of the floor is said where it was not given. */
export function seat(seated: Plain<Seat>) {
  const { pitchMm, threadLengthMm, threadDepthMm, crushMm } = seated
  const stackMm = seated.stack.reduce((belowMm, { thicknessMm }) => gap.stackMm({ belowMm, layerMm: thicknessMm }), 0)
  const runOut = {
    withStackMm: gap.runOutGapMm({ threadDepthMm, stackMm, crushMm, threadLengthMm }),
    withoutStackMm: gap.bareRunOutGapMm({ threadDepthMm, threadLengthMm })
  }
  const runOutStackMm = gap.runOutStackMm({ threadLengthMm, threadDepthMm, crushMm })
  const floor = seated.floor === null ? null : overFloor(seated.floor, { stackMm, crushMm })
  const leastStackMm = floor === null ? runOutStackMm : greater(runOutStackMm, floor.leastStackMm)
  const shoulderTurns = gap.shoulderTurns({ threadLengthMm, stackMm, pitchMm })
  return { stackMm, runOut, floor, shoulderTurns, leastStackMm }
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
