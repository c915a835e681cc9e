import { SOURCES, type Source } from '../../formula/source.ts'
import type { LoadRow, ProtectionStyle } from './protection-style.ts'

const PER_BREAKER_PERCENT = 80

function load(ambientC: number, { factor, source }: { readonly factor: number; readonly source: Source }): LoadRow {
  return { ambientC, loadPercent: PER_BREAKER_PERCENT * factor, ratingA: null, source }
}

/** What the maker multiplies the wanted rating by: cold, it carries more than is written on it, and hot, less. */
export const THERMAL_MULTIPLIERS = [
  { ambientC: -30, factor: 0.76 },
  { ambientC: -10, factor: 0.84 },
  { ambientC: 0, factor: 0.92 },
  { ambientC: 23, factor: 1 },
  { ambientC: 40, factor: 1.08 },
  { ambientC: 60, factor: 1.24 }
] as const

export const THERMAL: ProtectionStyle = {
  id: 'thermal',
  kind: 'breaker',
  says: 'thermal breaker, manual reset, snap-in',
  ratingsA: [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50],
  ratingsSource: SOURCES['rating-series'],
  gates: [],
  gatesSays: "no trip curve published here: take the maker's",
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: THERMAL_MULTIPLIERS.map(({ ambientC, factor }) =>
    load(ambientC, { factor: 1 / factor, source: SOURCES['thermal-breaker-sheet'] })
  ),
  breaking: [],
  sheet: []
}

export const IEC_60898: ProtectionStyle = {
  id: 'iec-60898',
  kind: 'breaker',
  says: 'breaker of the IEC 60898 type, up to 63 A',
  ratingsA: [6, 10, 13, 16, 20, 25, 32, 40, 50, 63],
  ratingsSource: SOURCES['rating-series'],
  gates: [
    { overRatio: 1.13, shortestS: 3600, longestS: null, source: SOURCES['iec-60898'] },
    { overRatio: 1.45, shortestS: null, longestS: 3600, source: SOURCES['iec-60898'] }
  ],
  gatesSays:
    "thermal band at 30 °C only; the magnetic trip is not in it, and it lies higher on DC: take the maker's curve for short circuits",
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [load(30, { factor: 1, source: SOURCES['breaker-load'] })],
  breaking: [],
  sheet: []
}

export const HYDRAULIC_MAGNETIC: ProtectionStyle = {
  id: 'hydraulic-magnetic',
  kind: 'breaker',
  says: 'hydraulic-magnetic breaker',
  ratingsA: [],
  ratingsSource: SOURCES['hydraulic-breaker-sheet'],
  gates: [],
  gatesSays: "holds 100 %, must trip at 125 or 135 % by its delay curve; no times published here: take the maker's",
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [load(25, { factor: 1, source: SOURCES['breaker-load'] })],
  breaking: [],
  sheet: []
}

const SUPPLEMENT = SOURCES['thermal-magnetic-supplement']

export const THERMAL_MAGNETIC: ProtectionStyle = {
  id: 'thermal-magnetic',
  kind: 'breaker',
  says: 'thermal-magnetic breaker set at 40 °C',
  ratingsA: [],
  ratingsSource: SUPPLEMENT,
  gates: [],
  gatesSays: "no trip band published here: take the maker's",
  quickEdge: 'unknown',
  slowEdge: 'unknown',
  loads: [
    load(40, { factor: 1, source: SUPPLEMENT }),
    load(45, { factor: 0.975, source: SUPPLEMENT }),
    load(55, { factor: 0.925, source: SUPPLEMENT }),
    load(65, { factor: 0.875, source: SUPPLEMENT })
  ],
  breaking: [],
  sheet: []
}
