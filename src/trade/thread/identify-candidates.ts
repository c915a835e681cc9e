import { silently } from '../../formula/working.ts'
import { basicSizes } from './basic.ts'
import type { Candidate } from './identify-crest.ts'
import type { Thread } from './thread.ts'
import { metricThreads } from './thread-list.ts'
import { limitsOf } from './thread-results.ts'
import { classOf } from './tolerance-class.ts'
import { unifiedThreads } from './unified-series.ts'

/** Every thread known here, with the limits of its usual class: what most screws and holes are. */
export function candidates(): readonly Candidate[] {
  return silently(() => [...metricThreads(), ...unifiedThreads()].map(candidateOf))
}

/** The limits are looked up when they are asked for: most threads are ruled out by diameter and pitch. */
function candidateOf(thread: Thread): Candidate {
  const { name, majorMm, pitchMm } = thread
  const basics = basicSizes(thread)
  return {
    name,
    majorMm,
    minorMm: basics.minorDiameterMm,
    pitchMm,
    get crest() {
      const { internal, external } = silently(() => limitsOf({ thread, toleranceClass: classOf(thread), basics }))
      return { internal: internal.minor, external: external.major }
    }
  }
}
