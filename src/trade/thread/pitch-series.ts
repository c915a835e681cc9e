/** Major diameter, ISO 261 choice (1 first, 2 second, 3 third), coarse pitch, fine pitches. In mm, after ISO 261; the choice from memory. */
type Row = readonly [majorMm: number, choice: 1 | 2 | 3, coarseMm: number | null, finesMm: readonly number[]]

const SERIES: readonly Row[] = [
  [1.6, 1, 0.35, [0.2]],
  [1.8, 2, 0.35, [0.2]],
  [2, 1, 0.4, [0.25]],
  [2.2, 2, 0.45, [0.25]],
  [2.5, 1, 0.45, [0.35]],
  [3, 1, 0.5, [0.35]],
  [3.5, 2, 0.6, [0.35]],
  [4, 1, 0.7, [0.5]],
  [4.5, 2, 0.75, [0.5]],
  [5, 1, 0.8, [0.5]],
  [5.5, 3, null, [0.5]],
  [6, 1, 1, [0.75]],
  [7, 2, 1, [0.75]],
  [8, 1, 1.25, [1, 0.75]],
  [9, 3, 1.25, [1, 0.75]],
  [10, 1, 1.5, [1.25, 1, 0.75]],
  [11, 3, 1.5, [1, 0.75]],
  [12, 1, 1.75, [1.5, 1.25, 1]],
  [14, 2, 2, [1.5, 1.25, 1]],
  [15, 3, null, [1.5, 1]],
  [16, 1, 2, [1.5, 1]],
  [17, 3, null, [1.5, 1]],
  [18, 2, 2.5, [2, 1.5, 1]],
  [20, 1, 2.5, [2, 1.5, 1]],
  [22, 2, 2.5, [2, 1.5, 1]],
  [24, 1, 3, [2, 1.5, 1]],
  [25, 3, null, [2, 1.5, 1]],
  [26, 3, null, [1.5]],
  [27, 2, 3, [2, 1.5, 1]],
  [28, 3, null, [2, 1.5, 1]],
  [30, 1, 3.5, [3, 2, 1.5, 1]],
  [32, 3, null, [2, 1.5]],
  [33, 2, 3.5, [3, 2, 1.5]],
  [35, 3, null, [1.5]],
  [36, 1, 4, [3, 2, 1.5]]
]

export interface SeriesSize {
  readonly majorMm: number
  /** ISO 261: take a size of the first choice where it will do. */
  readonly choice: 'first' | 'second' | 'third'
  readonly coarseMm: number | null
  /** Coarsest first. */
  readonly finesMm: readonly number[]
}

export function seriesSizes(): readonly SeriesSize[] {
  return SERIES.map(sizeOf)
}

export function seriesSize(majorMm: number): SeriesSize | undefined {
  const row = SERIES.find(([major]) => major === majorMm)
  return row && sizeOf(row)
}

function sizeOf([majorMm, choice, coarseMm, finesMm]: Row): SeriesSize {
  return { majorMm, choice: (['first', 'second', 'third'] as const)[choice - 1]!, coarseMm, finesMm }
}

/** Every pitch of the size, coarsest first. */
export function pitchesMm({ coarseMm, finesMm }: SeriesSize): readonly number[] {
  return coarseMm === null ? finesMm : [coarseMm, ...finesMm]
}
