import type { BoundsOf } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Result } from '../../report/answer.ts'
import { resultOf } from '../../report/result.ts'
import type { ResultMap } from '../../report/result-map.ts'
import * as clearance from '../../trade/hole/clearance.ts'
import * as depth from '../../trade/hole/depth.ts'
import type { hole } from '../../trade/hole/hole.ts'
import * as tapping from '../../trade/hole/tapping.ts'

const tipDepthMm = fact('tipDepthMm', { says: 'stop setting: tip of the drill below the face', symbol: 's', source: SOURCES.geometry })

export type HoleResults = ReturnType<typeof hole>

export const HOLE_RESULTS: ResultMap<HoleResults> = {
  'tip-depth': [tipDepthMm, r => r.tipDepthMm],
  'old-tip': [clearance.oldTipMm, r => r.oldTipMm],
  'point-length': [depth.pointLengthMm, r => r.pointLengthMm],
  'full-diameter-depth': [depth.fullDiameterDepthMm, r => r.fullDiameterDepthMm],
  'metal-left': [depth.metalLeftMm, r => r.metalLeftMm],
  'wall-left': [depth.wallLeftMm, r => r.wallLeftMm]
}

/** Two results a tap, under the name it has. */
export function tapResults({ taps }: Pick<BoundsOf<HoleResults>, 'taps'>): readonly Result[] {
  return taps.flatMap(({ name, threadDepthMm, tapTurns }) => [
    resultOf(`thread-depth.${name}`, { ...tapping.threadDepthMm, says: `${name} tap: face to its last full thread` }, threadDepthMm),
    resultOf(`turns.${name}`, { ...tapping.tapTurns, says: `${name} tap: turns` }, tapTurns)
  ])
}
