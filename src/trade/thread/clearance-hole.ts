import type { SourceId } from '../../formula/source.ts'

/** Screw, then the hole fine, medium and coarse, mm: ISO 273 as two open-source libraries have it. */
const REPRINTED: readonly Row[] = [
  [1.6, 1.7, 1.8, 2],
  [2, 2.2, 2.4, 2.6],
  [3, 3.2, 3.4, 3.6],
  [3.5, 3.7, 3.9, 4.2],
  [4.5, 4.8, 5, 5.3],
  [5, 5.3, 5.5, 5.8],
  [7, 7.4, 7.6, 8],
  [8, 8.4, 9, 10],
  [12, 13, 13.5, 14.5],
  [14, 15, 15.5, 16.5],
  [16, 17, 17.5, 18.5],
  [18, 19, 20, 21],
  [20, 21, 22, 24],
  [24, 25, 26, 28],
  [27, 28, 30, 32],
  [33, 34, 36, 38],
  [36, 37, 39, 42]
]

/** The same standard from memory. */
const REMEMBERED: readonly Row[] = [
  [2.5, 2.7, 2.9, 3.1],
  [4, 4.3, 4.5, 4.8],
  [6, 6.4, 6.6, 7],
  [10, 10.5, 11, 12],
  [22, 23, 24, 26],
  [30, 31, 33, 35]
]

type Row = readonly [majorMm: number, fineMm: number, mediumMm: number, coarseMm: number]

export interface ClearanceHole {
  readonly fineMm: number
  readonly mediumMm: number
  readonly coarseMm: number
  readonly source: SourceId
}

/** ISO 273 knows round sizes only: null for the others. */
export function clearanceHole({ majorMm }: { readonly majorMm: number }): ClearanceHole | null {
  return holeOf(majorMm, REPRINTED, 'iso-273') ?? holeOf(majorMm, REMEMBERED, 'iso-273-memory')
}

function holeOf(majorMm: number, rows: readonly Row[], source: SourceId): ClearanceHole | null {
  const row = rows.find(([major]) => major === majorMm)
  return row === undefined ? null : { fineMm: row[1], mediumMm: row[2], coarseMm: row[3], source }
}
