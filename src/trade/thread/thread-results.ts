import { fewRecalled } from '../../formula/few-recalled.ts'
import { silently } from '../../formula/working.ts'
import { type BasicSizes, basicSizes } from './basic.ts'
import { type ClearanceHole, clearanceHole } from './clearance-hole.ts'
import { FORMED_PERCENT, formingDrillMm } from './forming-drill.ts'
import { type Insert, insertFor } from './insert.ts'
import type { Limits, Span } from './limits.ts'
import { metricLimits } from './metric-limits.ts'
import { type MouthChamfer, mouthChamfer } from './mouth-chamfer.ts'
import { type PublishedTapDrill, publishedTapDrill } from './published-tap-drill.ts'
import { stressAreaMm2, unifiedStressAreaMm2 } from './stress-area.ts'
import { type TapDrill, tapDrills } from './tap-drills.ts'
import type { Thread } from './thread.ts'
import * as height from './thread-height.ts'
import { classOf, type ToleranceClass } from './tolerance-class.ts'
import { printedBasicMm } from './unified-limit.ts'
import { unifiedLimits } from './unified-limits.ts'

/** All that is known of a thread, ISO metric or unified. */
export interface ThreadResults extends Limits {
  readonly pitchMm: number
  readonly major: { readonly basicMm: number }
  readonly pitchDiameter: { readonly basicMm: number }
  readonly minor: { readonly basicMm: number }
  readonly root: { readonly basicMm: number }
  readonly stressAreaMm2: number
  readonly clearance: ClearanceHole | null
  readonly formingDrillMm: number
  readonly published: PublishedTapDrill & { readonly heightOn34Percent: number; readonly heightOn58Percent: number }
  readonly mouth: MouthChamfer
  /** The way back, where a thread is lost. */
  readonly insert: Insert
  readonly tapDrills: readonly TapDrill[]
}

/** Everything known of a thread, its limits in one class. The class is one that was read for this thread. */
export function threadResults(x: { readonly thread: Thread; readonly toleranceClass: ToleranceClass }): ThreadResults {
  const { majorMm, pitchMm } = x.thread
  const basics = basicSizes(x.thread)
  const limits = limitsOf({ basics, ...x })
  const published = published34(x.thread, basics)
  const printed = printedOf(x.thread, basics)
  return {
    pitchMm,
    major: { basicMm: majorMm },
    pitchDiameter: { basicMm: printed.pitchDiameterMm },
    minor: { basicMm: printed.minorDiameterMm },
    root: { basicMm: basics.rootDiameterMm },
    ...limits,
    stressAreaMm2: areaMm2(x.thread, basics),
    clearance: clearanceHole(x.thread),
    formingDrillMm: formingDrillMm({ majorMm, pitchMm, formedPercent: FORMED_PERCENT }),
    published,
    mouth: mouthChamfer({ majorMm, minorMm: basics.minorDiameterMm }),
    insert: insertFor({ majorMm, pitchMm }),
    tapDrills: tapDrills({ majorMm, pitchMm, minor: limits.internal.minor, publishedMm: published.diameterMm })
  }
}

/** Minor diameter of the hole, in the class of the designation, else the usual one. */
export function minorLimits(thread: Thread): Span {
  return silently(() => usualMinor(thread))
}

/** Major diameter of the screw, in the class of the designation, else the usual one. */
export function majorLimits(thread: Thread): Span {
  return silently(() => limitsOf({ thread, toleranceClass: classOf(thread), basics: basicSizes(thread) }).external.major)
}

/** Jobs have the same few threads. */
const usualMinor = fewRecalled(
  8,
  (thread: Thread) => limitsOf({ thread, toleranceClass: classOf(thread), basics: basicSizes(thread) }).internal.minor
)

/** Each standard rounds in its own way. */
export function limitsOf({ thread, toleranceClass, basics }: Fit): Limits {
  if (thread.system === 'metric' && toleranceClass.system === 'metric') return metricLimits({ thread, toleranceClass, basics })
  if (thread.system === 'unified' && toleranceClass.system === 'unified') return unifiedLimits({ thread, toleranceClass, basics })
  throw new Error(`a class of the other system for ${thread.name}`)
}

interface Fit {
  readonly thread: Thread
  readonly toleranceClass: ToleranceClass
  readonly basics: BasicSizes
}

/** A metric standard prints what its formulas give, in mm. */
function printedOf({ system }: Thread, { pitchDiameterMm, minorDiameterMm }: BasicSizes) {
  if (system === 'metric') return { pitchDiameterMm, minorDiameterMm }
  return {
    pitchDiameterMm: printedBasicMm(pitchDiameterMm, 'pitch diameter', 'E'),
    minorDiameterMm: printedBasicMm(minorDiameterMm, 'minor diameter', 'K')
  }
}

function areaMm2({ system, majorMm, pitchMm }: Thread, { pitchDiameterMm, rootDiameterMm }: BasicSizes): number {
  return system === 'metric' ? stressAreaMm2({ pitchDiameterMm, rootDiameterMm }) : unifiedStressAreaMm2({ majorMm, pitchMm })
}

function published34(thread: Thread, { triangleHeightMm }: BasicSizes): ThreadResults['published'] {
  const published = publishedTapDrill(thread)
  const x = { majorMm: thread.majorMm, holeDiameterMm: published.diameterMm, triangleHeightMm }
  return { ...published, heightOn34Percent: height.heightOn34Percent(x), heightOn58Percent: height.heightOn58Percent(x) }
}
