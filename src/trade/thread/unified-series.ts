export type UnifiedSeries = 'UNC' | 'UNF' | 'UNEF'

/** Threads to the inch in each series. After ASME B1.1 as part libraries and fastener suppliers reprint it; 1-3/16 from memory. */
type Row = readonly [size: string, unc: number | null, unf: number | null, unef: number | null]

const ROWS: readonly Row[] = [
  ['#0', null, 80, null],
  ['#1', 64, 72, null],
  ['#2', 56, 64, null],
  ['#3', 48, 56, null],
  ['#4', 40, 48, null],
  ['#5', 40, 44, null],
  ['#6', 32, 40, null],
  ['#8', 32, 36, null],
  ['#10', 24, 32, null],
  ['#12', 24, 28, 32],
  ['1/4', 20, 28, 32],
  ['5/16', 18, 24, 32],
  ['3/8', 16, 24, 32],
  ['7/16', 14, 20, 28],
  ['1/2', 13, 20, 28],
  ['9/16', 12, 18, 24],
  ['5/8', 11, 18, 24],
  ['11/16', null, null, 24],
  ['3/4', 10, 16, 20],
  ['13/16', null, null, 20],
  ['7/8', 9, 14, 20],
  ['15/16', null, null, 20],
  ['1', 8, 12, 20],
  ['1-1/16', null, null, 18],
  ['1-1/8', 7, 12, 18],
  ['1-3/16', null, null, 18],
  ['1-1/4', 7, 12, 18],
  ['1-5/16', null, null, 18],
  ['1-3/8', 6, 12, 18],
  ['1-7/16', null, null, 18],
  ['1-1/2', 6, 12, 18]
]

/** A unified inch thread of one of the three series. */
export interface UnifiedThread {
  readonly system: 'unified'
  /** As one writes it: `3/8-24 UNF`. */
  readonly name: string
  readonly majorMm: number
  readonly pitchMm: number
  readonly series: UnifiedSeries
  /** `3/8`, `#10`, `1-1/8`. */
  readonly size: string
  /** Threads to the inch. */
  readonly tpiCount: number
  /** The tolerance class that stood in the designation, as it stood there. */
  readonly classText: string | null
}

const THREADS: readonly UnifiedThread[] = ROWS.flatMap(([size, unc, unf, unef]) => [
  ...threadOf(size, 'UNC', unc),
  ...threadOf(size, 'UNF', unf),
  ...threadOf(size, 'UNEF', unef)
])

/** Every thread of the three series, by size, the coarsest first. */
export function unifiedThreads(): readonly UnifiedThread[] {
  return THREADS
}

function threadOf(size: string, series: UnifiedSeries, tpiCount: number | null): readonly UnifiedThread[] {
  if (tpiCount === null) return []
  const name = `${size}-${tpiCount} ${series}`
  return [{ system: 'unified', name, majorMm: sizeMm(size), pitchMm: 25.4 / tpiCount, series, size, tpiCount, classText: null }]
}

/** A number size is 0.060 inch and 0.013 for each number: in thousandths, so that the sum is exact. */
function sizeMm(size: string): number {
  if (size.startsWith('#')) return ((60 + 13 * Number(size.slice(1))) * 25.4) / 1000
  const [whole, fraction] = size.includes('-') ? size.split('-') : size.includes('/') ? ['0', size] : [size, '0/1']
  const [over, under] = fraction!.split('/')
  return (Number(whole) + Number(over) / Number(under)) * 25.4
}
