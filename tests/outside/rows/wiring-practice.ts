// Copied from published circulars and manuals. Each row names its source; the label says how the source was seen.
import type { Cited } from './cited.ts'

const mirror = (paragraph: string): Cited => ({
  source: `FAA AC 43.13-1B ${paragraph}, verbatim mirror of the circular`,
  label: 'read-secondary'
})

/** What the circular for aircraft asks of a harness. */
export const AIRCRAFT_HARNESS = {
  supportIn: { id: 'pr-0', printed: 24, ...mirror('par. 11-96a') },
  deflectionIn: { id: 'pr-1', printed: 0.5, ...mirror('par. 11-118') },
  fuelLineIn: { id: 'pr-8', printed: 6, ...mirror('par. 11-96') },
  fuelLineLeastIn: { id: 'pr-8', printed: 2, ...mirror('par. 11-96') },
  refinishH: { id: 'pr-12', printed: 24, ...mirror('par. 11-189b') },
  groundJointOhm: { id: 'terminal-001', printed: 0.003, ...mirror('ch. 11 par. 11-189') }
} as const

/** Tie or clamp spacing on a small harness, in mm: a workshop habit, no published source. */
export const SMALL_HARNESS = {
  id: 'pr-19',
  leastMm: 150,
  mostMm: 200,
  source: 'workshop habit; no published source',
  label: 'common practice'
} as const
