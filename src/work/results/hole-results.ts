import type { BoundsOf } from '../../formula/bounds.ts'
import type { Result } from '../../report/answer.ts'
import { resultOf } from '../../report/result.ts'
import type { ResultMap } from '../../report/result-map.ts'
import * as clearance from '../../trade/hole/clearance.ts'
import * as depth from '../../trade/hole/depth.ts'
import type { hole } from '../../trade/hole/hole.ts'
import { TIP_DEPTH } from '../../trade/hole/stop.ts'
import * as tapping from '../../trade/hole/tapping.ts'
import { RUN_OUT } from '../../trade/thread/run-out.ts'

export type HoleResults = ReturnType<typeof hole>

export const HOLE_RESULTS: ResultMap<HoleResults> = {
  'tip-depth': [TIP_DEPTH, r => r.tipDepthMm, undefined, 'depth-down'],
  'old-tip': [clearance.oldTipMm, r => r.oldTipMm],
  'gap.point': [clearance.pointGapMm, r => r.pointGapMm, undefined, 'depth-down'],
  'gap.rim': [clearance.rimGapMm, r => r.rimGapMm, undefined, 'depth-down'],
  'gap.least': [clearance.LEAST_GAP, r => r.leastGapMm, undefined, 'depth-down'],
  opening: [depth.openingMm, r => r.openingMm, 'how much the drill opens the old hole, on the diameter'],
  'point-length': [depth.pointLengthMm, r => r.pointLengthMm],
  'full-diameter-depth': [depth.fullDiameterDepthMm, r => r.fullDiameterDepthMm, undefined, 'depth-down'],
  'metal-left': [depth.metalLeftMm, r => r.metalLeftMm, undefined, 'depth-down'],
  'wall-left': [depth.wallLeftMm, r => r.wallLeftMm, undefined, 'depth-down'],
  'run-out': [RUN_OUT, r => r.runOutMm],
  'usable-thread': [tapping.usableThreadMm, r => r.usableThreadMm, undefined, 'depth-down']
}

/** The results of each tap, under the name it has. */
export function tapResults({ taps }: Pick<BoundsOf<HoleResults>, 'taps'>): readonly Result[] {
  return taps.flatMap(({ name, threadDepthMm, tapTurns, centreGapMm }) => [
    resultOf(
      `thread-depth.${name}`,
      { ...tapping.threadDepthMm, says: `${name} tap: face to its last full thread` },
      threadDepthMm,
      'depth-down'
    ),
    resultOf(`turns.${name}`, { ...tapping.tapTurns, says: `${name} tap: turns` }, tapTurns, 'turns-down'),
    ...(centreGapMm === null
      ? []
      : [
          resultOf(
            `centre-gap.${name}`,
            { ...tapping.centreGapMm, says: `${name} tap: its front centre to the drilled point` },
            centreGapMm,
            'depth-down'
          )
        ])
  ])
}
