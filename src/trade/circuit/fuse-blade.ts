import { SOURCES } from '../../formula/source.ts'
import type { BreakingRow, LoadRow, ProtectionStyle } from './protection-style.ts'

const SHEET = SOURCES['blade-sheet']
const HUNDRED_HOURS_S = 360_000

const BLADE_BREAKING: readonly BreakingRow[] = [
  { greatestRatingA: 100, breakingA: 1000, volts: { sureV: 32, mostV: 58 }, says: 'at 32 V or 58 V DC', source: SOURCES['iso-8820-3'] }
]

/** Three quarters at 25 °C. */
export const FUSE_LOAD: LoadRow = { ambientC: 25, loadPercent: 75, ratingA: null, source: SOURCES['fuse-load'] }

/** Where the maker prints no re-rating. The source means the temperature of the case. */
export const HOT_FUSE_LOAD: LoadRow = { ambientC: 85, loadPercent: 65, ratingA: null, source: SOURCES['ecss-fuse'] }

/** Three quarters of what the maker re-rates it to: the sheet's own margin is in its 20 °C figure as well and drops out of the ratio. */
function reratedLoad(
  ambientC: number,
  { allowedA, ofA, ratingA }: { readonly allowedA: number; readonly ofA: number; readonly ratingA: number | null }
): LoadRow {
  return { ambientC, loadPercent: (75 * allowedA) / ofA, ratingA, source: SHEET }
}

export const BLADE: ProtectionStyle = {
  id: 'blade',
  kind: 'fuse',
  says: 'medium blade fuse',
  ratingsA: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
  ratingsSource: SOURCES['iso-8820-3'],
  gates: [
    { overRatio: 1, shortestS: HUNDRED_HOURS_S, longestS: null, source: SHEET },
    { overRatio: 1.1, shortestS: HUNDRED_HOURS_S, longestS: null, source: SOURCES['blade-sheet-110'] },
    { overRatio: 1.35, shortestS: 0.75, longestS: 600, source: SHEET },
    { overRatio: 1.6, shortestS: 0.25, longestS: 50, source: SHEET },
    { overRatio: 2, shortestS: 0.15, longestS: 5, source: SHEET }
  ],
  gatesSays: 'gates of one sheet, noted for the larger ratings; 1 A and 2 A fuses may differ',
  quickEdge: 'goes on',
  slowEdge: 'goes on',
  loads: [FUSE_LOAD, reratedLoad(65, { allowedA: 8, ofA: 10, ratingA: 10 }), reratedLoad(65, { allowedA: 19, ofA: 25, ratingA: null })],
  breaking: BLADE_BREAKING,
  sheet: [
    { ratingA: 25, coldOhm: 0.00252, dropV: null, meltingA2S: 1000, source: SHEET },
    { ratingA: 40, coldOhm: 0.00144, dropV: 0.096, meltingA2S: 3300, source: SHEET }
  ]
}

export const BLADE_MINI: ProtectionStyle = {
  id: 'blade-mini',
  kind: 'fuse',
  says: 'miniature blade fuse',
  ratingsA: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
  ratingsSource: SOURCES['blade-overview'],
  gates: [],
  gatesSays: 'no gates seen for the miniature form',
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [FUSE_LOAD, HOT_FUSE_LOAD],
  breaking: BLADE_BREAKING,
  sheet: []
}

export const BLADE_LARGE: ProtectionStyle = {
  id: 'blade-large',
  kind: 'fuse',
  says: 'large blade fuse',
  ratingsA: [20, 30, 40, 50, 60, 70, 80],
  ratingsSource: SOURCES['rating-series'],
  gates: [],
  gatesSays: 'no gates seen for the large form',
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [FUSE_LOAD, reratedLoad(65, { allowedA: 34, ofA: 40, ratingA: null }), reratedLoad(110, { allowedA: 25, ofA: 40, ratingA: null })],
  breaking: BLADE_BREAKING,
  sheet: [
    { ratingA: 30, coldOhm: 0.0019, dropV: null, meltingA2S: 4100, source: SHEET },
    { ratingA: 40, coldOhm: 0.0014, dropV: 0.075, meltingA2S: 8500, source: SHEET }
  ]
}
