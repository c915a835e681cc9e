import { fact } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import type { Source } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { type Conductor, conductorName, gaugeFor, gaugeName } from './ampacity-conductor.ts'

/** What a printed current already allows for. Nothing of this is taken off again. */
export interface Contained {
  readonly ambientC: number
  readonly altitudeM: number
  /** The largest bundle that is in the figure; infinite where it says "or more". */
  readonly bundleCount: number
  readonly says: string
}

export interface Column {
  readonly insulationC: number
  readonly source: Source
  /** What an engine space of 50 °C does, where the table has it printed. */
  readonly engineSpace?: { readonly factor: number; readonly source: Source }
}

export interface Row {
  readonly awg: number
  /** One for each column. */
  readonly currentsA: readonly number[]
  readonly contains: Contained
}

export interface AmpacityTable {
  readonly name: string
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
  /** Below the first column: refused, or scaled by the rise that is left. */
  readonly coolerInsulation: 'refuse' | 'by rise'
}

/** One printed current, with where it stood. */
export interface PrintedCurrent {
  readonly awg: number
  readonly column: Column
  readonly tableA: number
  readonly contains: Contained
}

/** The printed current of a conductor; undefined where the table has no size so small. */
export function printedCurrent(table: AmpacityTable, conductor: Conductor, insulationC: number): PrintedCurrent | undefined {
  const awg = gaugeFor(
    conductor,
    table.rows.map(row => row.awg)
  )
  const row = table.rows.find(row => row.awg === awg)
  if (row === undefined) return undefined
  const column = columnFor(table, insulationC)
  const tableA = row.currentsA[table.columns.indexOf(column)]!
  recordStep(
    fact('tableA', { says: 'printed current', symbol: 'It', source: column.source }),
    tableA,
    () => `${conductorName(conductor)} read at ${gaugeName(row.awg)}, ${column.insulationC} °C insulation; holds for ${row.contains.says}`
  )
  return { awg: row.awg, column, tableA, contains: row.contains }
}

/** The column at or below the insulation: a hotter one would claim more than the wire is rated for. */
function columnFor({ columns, coolerInsulation }: AmpacityTable, insulationC: number): Column {
  const lowest = columns[0]!
  const column = columns.filter(column => column.insulationC <= insulationC).at(-1)
  if (column !== undefined) return column
  if (coolerInsulation === 'by rise') return lowest
  throw new OutsideRange('tableA', 'insulationC', insulationC, lowest.insulationC, columns.at(-1)!.insulationC)
}
