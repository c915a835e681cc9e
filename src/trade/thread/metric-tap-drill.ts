import type { SourceId } from '../../formula/source.ts'
import type { Drill } from './drill.ts'
import { drillsOf } from './drill-sets.ts'

type Row = readonly [majorMm: number, pitchMm: number, drillMm: number]

/** Tap drills as printed, by source. */
const PRINTED = {
  'iso-2306': [
    [1.6, 0.35, 1.25],
    [1.8, 0.35, 1.45],
    [2.2, 0.45, 1.75],
    [2.5, 0.45, 2.05],
    [3.5, 0.6, 2.9],
    [4, 0.7, 3.3],
    [4.5, 0.75, 3.7],
    [6, 1, 5],
    [7, 1, 6],
    [8, 1.25, 6.8],
    [10, 1.5, 8.5],
    [11, 1.5, 9.5],
    [12, 1.75, 10.2],
    [14, 2, 12],
    [18, 2.5, 15.5],
    [20, 2.5, 17.5],
    [24, 3, 21],
    [27, 3, 24],
    [33, 3.5, 29.5],
    [36, 4, 32]
  ],
  'tap-drill-stocked': [
    [3, 0.35, 2.65],
    [3.5, 0.35, 3.15],
    [4.5, 0.5, 4],
    [5, 0.5, 4.5],
    [7, 0.75, 6.2],
    [9, 0.75, 8.2],
    [9, 1, 8],
    [11, 0.75, 10.2],
    [11, 1, 10],
    [16, 1.5, 14.5],
    [18, 1.5, 16.5],
    [20, 1.5, 18.5],
    [20, 2, 18]
  ],
  'tap-drill-handbook': [
    [6, 0.75, 5.2],
    [8, 0.75, 7.2],
    [10, 0.75, 9.2],
    [10, 1.25, 8.8],
    [12, 1.25, 10.8],
    [12, 1.5, 10.5],
    [14, 1.25, 12.8],
    [14, 1.5, 12.5],
    [22, 2, 20],
    [24, 2, 22],
    [30, 2, 28]
  ]
} as const satisfies { readonly [Id in SourceId]?: readonly Row[] }

/** The tap drill that tables give; where none was seen, the rule D - P rounded to the metric set. */
export function metricTapDrill(thread: Size): { readonly diameterMm: number; readonly source: SourceId } {
  return printed(thread) ?? { diameterMm: byRule(thread), source: 'tap-drill-rule' }
}

interface Size {
  readonly majorMm: number
  readonly pitchMm: number
}

function printed({ majorMm, pitchMm }: Size): { readonly diameterMm: number; readonly source: SourceId } | undefined {
  for (const [source, rows] of Object.entries(PRINTED) as [SourceId, readonly Row[]][]) {
    const row = rows.find(([major, pitch]) => major === majorMm && pitch === pitchMm)
    if (row !== undefined) return { diameterMm: row[2], source }
  }
  return undefined
}

/** Nearest size of the standard runs (tables leave out x.25 and x.75 below 14 mm); halfway goes up, to the lesser torque. */
function byRule({ majorMm, pitchMm }: Size): number {
  const wantedMm = majorMm - pitchMm
  const off = (drill: Drill) => Math.abs(drill.diameterMm - wantedMm)
  const runs = drillsOf('metric').filter(({ source }) => source === 'iso-235' || source === 'iso-235-memory')
  return runs.reduce((a, b) => (off(b) <= off(a) + 1e-9 ? b : a)).diameterMm
}
