import { silently } from '../../formula/working.ts'
import type { Thread } from '../thread/thread.ts'
import { threadResults } from '../thread/thread-results.ts'
import { classOf } from '../thread/tolerance-class.ts'
import type { JointThread } from './joint.ts'

/** What a joint needs of its thread, in the class of its designation, else the usual one. */
export function jointThread(thread: Thread): JointThread {
  const r = silently(() => threadResults({ thread, toleranceClass: classOf(thread) }))
  return {
    majorMm: thread.majorMm,
    pitchMm: r.pitchMm,
    pitchDiameterMm: r.pitchDiameter.basicMm,
    stressAreaMm2: r.stressAreaMm2,
    screwMajorMinMm: r.external.major.minMm,
    screwPitchMinMm: r.external.pitchDiameter.minMm,
    holeMinorMaxMm: r.internal.minor.maxMm,
    holePitchMaxMm: r.internal.pitchDiameter.maxMm
  }
}
