import type { SourceId } from '../../formula/source.ts'
import type { Drill } from './drill.ts'
import { drillsOf } from './drill-sets.ts'
import { heightHoleMm } from './thread-height.ts'
import type { UnifiedThread } from './unified-series.ts'

/** Thread, drill, diameter of the drill in inches. About 75 % of 3/4 H, the column for soft material of an open-source part library. */
const REPRINTED: readonly Row[] = [
  ['#0-80', '3/64', 3 / 64],
  ['#1-72', '#53', 0.0595],
  ['#2-56', '#50', 0.07],
  ['#3-48', '#47', 0.0785],
  ['#3-56', '#45', 0.082],
  ['#4-48', '#42', 0.0935],
  ['#5-40', '#38', 0.1015],
  ['#6-32', '#36', 0.1065],
  ['#6-40', '#33', 0.113],
  ['#8-36', '#29', 0.136],
  ['#10-24', '#25', 0.1495],
  ['#12-24', '#16', 0.177],
  ['#12-28', '#14', 0.182],
  ['1/4-20', '#7', 0.201],
  ['5/16-18', 'F', 0.257],
  ['5/16-24', 'I', 0.272],
  ['3/8-24', 'Q', 0.332],
  ['7/16-14', 'U', 0.368],
  ['1/2-13', '27/64', 27 / 64],
  ['1/2-20', '29/64', 29 / 64],
  ['9/16-18', '33/64', 33 / 64],
  ['5/8-11', '17/32', 17 / 32],
  ['3/4-10', '21/32', 21 / 32],
  ['3/4-16', '11/16', 11 / 16],
  ['7/8-14', '13/16', 13 / 16],
  ['1-8', '7/8', 7 / 8]
]

/** The usual shop chart, from memory. */
const REMEMBERED: readonly Row[] = [
  ['#1-64', '#53', 0.0595],
  ['#2-64', '#50', 0.07],
  ['#4-40', '#43', 0.089],
  ['#5-44', '#37', 0.104],
  ['#8-32', '#29', 0.136],
  ['#10-32', '#21', 0.159],
  ['1/4-28', '#3', 0.213],
  ['3/8-16', '5/16', 5 / 16],
  ['7/16-20', '25/64', 25 / 64],
  ['9/16-12', '31/64', 31 / 64],
  ['5/8-18', '37/64', 37 / 64],
  ['7/8-9', '49/64', 49 / 64],
  ['1-12', '59/64', 59 / 64],
  ['1-1/8-7', '63/64', 63 / 64],
  ['1-1/8-12', '1-3/64', 1 + 3 / 64],
  ['1-1/4-7', '1-7/64', 1 + 7 / 64],
  ['1-1/4-12', '1-11/64', 1 + 11 / 64],
  ['1-3/8-6', '1-7/32', 1 + 7 / 32],
  ['1-3/8-12', '1-19/64', 1 + 19 / 64],
  ['1-1/2-6', '1-11/32', 1 + 11 / 32],
  ['1-1/2-12', '1-27/64', 1 + 27 / 64]
]

type Row = readonly [thread: string, drill: string, inches: number]

/** The published tap drill; in the extra fine series, for which no chart is at hand, the drill nearest to the usual thread height. */
export function unifiedTapDrill(thread: Size): { readonly diameterMm: number; readonly source: SourceId } {
  const name = `${thread.size}-${thread.tpiCount}`
  return printed(name, REPRINTED, 'unified-tap-drill') ?? printed(name, REMEMBERED, 'unified-tap-drill-memory') ?? byHeight(thread)
}

type Size = Pick<UnifiedThread, 'size' | 'tpiCount' | 'majorMm' | 'pitchMm'>

function printed(name: string, rows: readonly Row[], source: SourceId) {
  const row = rows.find(([thread]) => thread === name)
  return row === undefined ? undefined : { diameterMm: row[2] * 25.4, source }
}

/** "75 % thread" of inch charts means this share of 3/4 H. */
const USUAL_PERCENT = 75

function byHeight({ majorMm, pitchMm }: Size): { readonly diameterMm: number; readonly source: SourceId } {
  const wantedMm = heightHoleMm({ majorMm, pitchMm, heightPercent: USUAL_PERCENT })
  const off = (drill: Drill) => Math.abs(drill.diameterMm - wantedMm)
  const drills = SETS.flatMap(drillsOf)
  return { diameterMm: drills.reduce((a, b) => (off(b) < off(a) ? b : a)).diameterMm, source: 'unified-tap-drill-rule' }
}

/** Of two as near, the inch drill. */
const SETS = ['fraction', 'number', 'letter', 'metric'] as const
