import { fewRecalled } from '../../formula/few-recalled.ts'
import { silently } from '../../formula/working.ts'
import type { Thread } from '../thread/thread.ts'
import { threadResults } from '../thread/thread-results.ts'
import { classOf } from '../thread/tolerance-class.ts'
import type { JointThread } from './joint.ts'

/** Jobs have the same few threads. */
const usualResults = fewRecalled(8, (thread: Thread) => threadResults({ thread, toleranceClass: classOf(thread) }))

/** What a joint needs of its thread, in the class of its designation, else the usual one; in a hole that is wider than its limits, that width. */
export function jointThread(thread: Thread, widestMm = 0): JointThread {
  const r = silently(() => usualResults(thread))
  return {
    majorMm: thread.majorMm,
    pitchMm: r.pitchMm,
    pitchDiameterMm: r.pitchDiameter.basicMm,
    stressAreaMm2: r.stressAreaMm2,
    screwMajorMinMm: r.external.major.minMm,
    screwPitchMinMm: r.external.pitchDiameter.minMm,
    holeMinorMaxMm: Math.max(r.internal.minor.maxMm, widestMm),
    holePitchMaxMm: r.internal.pitchDiameter.maxMm
  }
}
