import type { Given, Plain } from '../../formula/given.ts'
import { recordStep } from '../../formula/working.ts'
import { runOutMm as regularRunOutMm } from '../thread/run-out.ts'
import * as clearance from './clearance.ts'
import * as depth from './depth.ts'
import { type OldHole, oldHole } from './old-hole.ts'
import * as tapping from './tapping.ts'
import type { Tap } from './taps.ts'

/** A blind hole to be opened to a stop and tapped. The stop comes from `stopSetting`, which also refuses what cannot be. */
export interface Hole extends OldHole {
  /** What the stop is set to: one exact number. */
  readonly tipDepthMm: Given
  /** How far the drill goes beyond its stop: nominally nought, with the error both ways as its bounds. */
  readonly stopErrorMm: Given
  readonly majorMm: Given
  readonly pitchMm: Given
  readonly tapClearMm: Given
  readonly taps: readonly Tap[]
  /** From the old tip to what lies behind. */
  readonly metalBelowMm: Given | null
  /** Beside the hole as found. */
  readonly wallMm: Given | null
  /** Full thread wanted. */
  readonly needMm: Given | null
}

/** Gaps to the old bottom, depths, metal left, and what each tap leaves. What was not given comes out null. */
export function hole(planned: Plain<Hole>) {
  const { foundDiameterMm, drillMm, pointDeg, tipDepthMm, stopErrorMm, majorMm, metalBelowMm, wallMm } = planned
  const openingMm = depth.openingMm({ drillMm, foundDiameterMm })
  const { oldTipMm, rimRadiusMm, rimGainMm } = oldHole(planned)
  const pointGapMm = clearance.pointGapMm({ oldTipMm, tipDepthMm, stopErrorMm })
  const rimGapMm = clearance.rimGapMm({ oldTipMm, rimGainMm, tipDepthMm, stopErrorMm })
  const leastGapMm = Math.min(pointGapMm, rimGapMm)
  recordStep(clearance.LEAST_GAP, leastGapMm, () => 'the lesser of g1 and g2')
  const pointLengthMm = depth.pointLengthMm({ drillMm, pointDeg })
  const fullDiameterDepthMm = depth.fullDiameterDepthMm({ tipDepthMm, stopErrorMm, pointLengthMm })
  const metalLeftMm = metalBelowMm === null ? null : depth.metalLeftMm({ oldTipMm, metalBelowMm, tipDepthMm, stopErrorMm })
  const wallLeftMm = wallMm === null ? null : depth.wallLeftMm({ wallMm, majorMm, foundDiameterMm })
  const { runOutMm, usableThreadMm, centreRoomMm, taps, best } = tapped(planned, { pointLengthMm, fullDiameterDepthMm })
  // Written out field by field: spreading parts into one took half the time of the whole calculation.
  return {
    oldTipMm,
    rimRadiusMm,
    pointGapMm,
    rimGapMm,
    leastGapMm,
    first: firstAt(rimGainMm),
    tipDepthMm,
    openingMm,
    pointLengthMm,
    fullDiameterDepthMm,
    metalBelowMm,
    metalLeftMm,
    wallLeftMm,
    runOutMm,
    usableThreadMm,
    centreRoomMm,
    taps,
    best
  }
}

/** Which part of the drill would meet the old bottom first. */
export function firstAt(rimGainMm: number): 'point' | 'rim' | 'point and rim alike' {
  if (rimGainMm === 0) return 'point and rim alike'
  return rimGainMm > 0 ? 'point' : 'rim'
}

interface Drilled {
  readonly pointLengthMm: number
  readonly fullDiameterDepthMm: number
}

function tapped(planned: Plain<Hole>, { pointLengthMm, fullDiameterDepthMm }: Drilled) {
  const { pitchMm, tapClearMm, needMm } = planned
  const runOutMm = regularRunOutMm({ pitchMm })
  const usableThreadMm = tapping.usableThreadMm({ fullDiameterDepthMm, runOutMm })
  const centreRoomMm = tapping.centreRoomMm({ pointLengthMm, tapClearMm })
  const taps = planned.taps.map(({ name, chamferTurns, centreMm }) => {
    const threadDepthMm = tapping.threadDepthMm({ fullDiameterDepthMm, tapClearMm, chamferTurns, pitchMm })
    const tapTurns = tapping.tapTurns({ fullDiameterDepthMm, tapClearMm, pitchMm })
    const needMarginMm = needMm === null ? null : tapping.needMarginMm({ threadDepthMm, needMm })
    const centreGapMm = centreMm === null ? null : tapping.centreGapMm({ centreRoomMm, centreMm })
    return { name, threadDepthMm, tapTurns, needMarginMm, centreGapMm }
  })
  return { runOutMm, usableThreadMm, centreRoomMm, taps, best: bestOf(taps) }
}

interface Cut {
  readonly name: string
  readonly threadDepthMm: number
  readonly needMarginMm: number | null
}

/** The tap that leaves most full thread; null without taps. */
function bestOf(taps: readonly Cut[]) {
  if (taps.length === 0) return null
  const { name, threadDepthMm, needMarginMm } = taps.reduce((best, tap) => (tap.threadDepthMm > best.threadDepthMm ? tap : best))
  return { name, threadDepthMm, needMarginMm }
}
