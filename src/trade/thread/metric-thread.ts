import * as basic from './basic.ts'
import { type ClearanceHole, clearanceHole } from './clearance-hole.ts'
import { FORMED_PERCENT, formingDrillMm } from './forming-drill.ts'
import type { MetricClass } from './metric-class.ts'
import { type ExternalLimits, type InternalLimits, metricLimits } from './metric-limits.ts'
import { type PublishedTapDrill, publishedTapDrill } from './published-tap-drill.ts'
import * as stress from './stress-area.ts'
import { type TapDrill, tapDrills } from './tap-drills.ts'
import type { MetricThread } from './thread.ts'
import * as height from './thread-height.ts'

/** All that is known of an ISO metric thread. */
export interface MetricResults {
  readonly system: 'metric'
  readonly pitchMm: number
  readonly major: { readonly basicMm: number }
  readonly pitchDiameter: { readonly basicMm: number }
  readonly minor: { readonly basicMm: number }
  readonly root: { readonly basicMm: number }
  readonly internal: InternalLimits
  readonly external: ExternalLimits
  readonly stressAreaMm2: number
  readonly clearance: ClearanceHole | null
  readonly formingDrillMm: number
  readonly published: PublishedTapDrill & { readonly heightOn34Percent: number; readonly heightOn58Percent: number }
  readonly tapDrills: readonly TapDrill[]
}

export function metricThread(thread: MetricThread, toleranceClass: MetricClass): MetricResults {
  const { majorMm, pitchMm } = thread
  const triangleHeightMm = basic.triangleHeightMm({ pitchMm })
  const pitchDiameterMm = basic.pitchDiameterMm({ majorMm, triangleHeightMm })
  const minorDiameterMm = basic.minorDiameterMm({ majorMm, triangleHeightMm })
  const rootDiameterMm = basic.rootDiameterMm({ majorMm, triangleHeightMm })
  const limits = metricLimits({ thread, toleranceClass, basics: { majorMm, pitchDiameterMm, minorDiameterMm } })
  const published = publishedTapDrill(thread)
  return {
    system: 'metric',
    pitchMm,
    major: { basicMm: majorMm },
    pitchDiameter: { basicMm: pitchDiameterMm },
    minor: { basicMm: minorDiameterMm },
    root: { basicMm: rootDiameterMm },
    ...limits,
    stressAreaMm2: stress.stressAreaMm2({ pitchDiameterMm, rootDiameterMm }),
    clearance: clearanceHole(thread),
    formingDrillMm: formingDrillMm({ majorMm, pitchMm, formedPercent: FORMED_PERCENT }),
    published: {
      ...published,
      heightOn34Percent: height.heightOn34Percent({ majorMm, holeDiameterMm: published.diameterMm, triangleHeightMm }),
      heightOn58Percent: height.heightOn58Percent({ majorMm, holeDiameterMm: published.diameterMm, triangleHeightMm })
    },
    tapDrills: tapDrills({ majorMm, pitchMm, minor: limits.internal.minor, publishedMm: published.diameterMm })
  }
}
