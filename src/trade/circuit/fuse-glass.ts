import { SOURCES } from '../../formula/source.ts'
import { FUSE_LOAD, HOT_FUSE_LOAD } from './fuse-blade.ts'
import { type BreakingRow, CARRIES_S, type ProtectionStyle } from './protection-style.ts'

const GUIDE = SOURCES['ul-248-14']

/** Printed for alternating current: a fuse breaks less direct current at the same voltage, and what it breaks at 32 V is another figure. */
const SAYS = 'printed for 250 V AC; its DC figure differs: ask the maker'

const BREAKING: readonly BreakingRow[] = [
  { greatestRatingA: 1, breakingA: 35, volts: null, says: SAYS, source: GUIDE },
  // Seen up to 3.5 A. The row from 3.6 A to 10 A was not; the lower one before it is held.
  { greatestRatingA: 10, breakingA: 100, volts: null, says: SAYS, source: GUIDE },
  { greatestRatingA: 15, breakingA: 750, volts: null, says: SAYS, source: GUIDE }
]

export const GLASS: ProtectionStyle = {
  id: 'glass',
  kind: 'fuse',
  says: 'glass fuse to UL 248-14',
  ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
  ratingsSource: SOURCES['rating-series'],
  gates: [
    { overRatio: 1, shortestS: CARRIES_S, longestS: null, source: GUIDE },
    { overRatio: 1.35, shortestS: null, longestS: 3600, source: GUIDE }
  ],
  gatesSays: 'carries its rating, opens at 135 % within the hour; no shortest time is published',
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [FUSE_LOAD, HOT_FUSE_LOAD],
  breaking: BREAKING,
  sheet: []
}
