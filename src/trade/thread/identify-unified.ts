import type { Candidate } from './identify-crest.ts'
import { unifiedMinorDiameterMm } from './unified-basic.ts'
import { unifiedLimits } from './unified-limits.ts'
import { unifiedThreads } from './unified-series.ts'

/** What most screws and holes are. */
const USUAL = {
  system: 'unified',
  internal: { name: '2B', assumed: null },
  external: { name: '2A', assumed: null }
} as const

/** The unified series as candidates, with their own limits of classes 2A and 2B. */
export function unifiedCandidates(): readonly Candidate[] {
  return unifiedThreads().map(thread => {
    const { name, majorMm, pitchMm } = thread
    const { internal, external } = unifiedLimits({ thread, toleranceClass: USUAL })
    return {
      name,
      majorMm,
      minorMm: unifiedMinorDiameterMm({ majorMm, pitchMm }),
      pitchMm,
      crest: { external: [external.major.minMm, external.major.maxMm], internal: [internal.minor.minMm, internal.minor.maxMm] }
    }
  })
}
