import { silently } from '../../formula/working.ts'
import { minorDiameterMm, triangleHeightMm } from './basic.ts'
import { DRILL_SETS, type Drill, sameSize } from './drill.ts'
import { drillsOf } from './drill-sets.ts'
import { heightOn34Percent, heightOn58Percent } from './thread-height.ts'

export interface TapDrill extends Drill {
  readonly heightOn34Percent: number
  readonly heightOn58Percent: number
  /** Whether the hole is inside the minor limits of the internal class. */
  readonly within: boolean
  /** Whether tables recommend this one. */
  readonly recommended: boolean
}

/** Less height than this is no thread to speak of. */
const LEAST_34_PERCENT = 50

interface Hole {
  readonly majorMm: number
  readonly pitchMm: number
  /** Limits of the minor diameter of the internal thread. */
  readonly minor: { readonly minMm: number; readonly maxMm: number }
  readonly publishedMm: number
}

/** Every drill of the four sets from the basic minor diameter up to half the thread height on 3/4 H, smallest first. */
export function tapDrills(hole: Hole): readonly TapDrill[] {
  return silently(() => {
    const heightMm = triangleHeightMm(hole)
    const leastMm = minorDiameterMm({ majorMm: hole.majorMm, triangleHeightMm: heightMm })
    return DRILL_SETS.flatMap(drillsOf)
      .filter(({ diameterMm }) => diameterMm >= leastMm && diameterMm < hole.majorMm)
      .map(drill => judged(drill, hole, heightMm))
      .filter(row => row.heightOn34Percent >= LEAST_34_PERCENT)
      .sort((a, b) => a.diameterMm - b.diameterMm)
  })
}

function judged(drill: Drill, { majorMm, minor, publishedMm }: Hole, heightMm: number): TapDrill {
  const { diameterMm } = drill
  const x = { majorMm, holeDiameterMm: diameterMm, triangleHeightMm: heightMm }
  return {
    ...drill,
    heightOn34Percent: heightOn34Percent(x),
    heightOn58Percent: heightOn58Percent(x),
    within: diameterMm >= minor.minMm && diameterMm <= minor.maxMm,
    recommended: sameSize(diameterMm, publishedMm)
  }
}
