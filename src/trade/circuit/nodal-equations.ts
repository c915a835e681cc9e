import { Matrix } from 'ml-matrix'
import type { Plain } from '../../formula/given.ts'
import { nodesOf, type PlainElement, type PlainNetwork, type Resistor, type VoltageSource } from './network.ts'

/** An element whose current is an unknown of its own. */
type Row = Plain<Resistor | VoltageSource>

/** Modified nodal analysis: the unknowns are the node voltages but that of the 0 V node, then the currents of the rows. */
export interface Equations {
  readonly nodes: readonly string[]
  readonly rows: readonly Row[]
  readonly left: Matrix
  readonly right: Matrix
}

/** Below this a wire or a joint is written as a source of 0 V is: 1/R would swamp the other entries and make a current of mere rounding. */
const HARDLY_RESISTS_OHM = 0.01

export function equationsOf(network: PlainNetwork): Equations {
  const nodes = nodesOf(network).slice(1)
  const rows = network.elements.filter(hasRow)
  const size = nodes.length + rows.length
  const [left, right] = [Matrix.zeros(size, size), Matrix.zeros(size, 1)]
  const place = new Map<string | PlainElement, number>([...nodes, ...rows].map((unknown, i) => [unknown, i]))
  for (const element of network.elements) {
    const ends = { from: place.get(element.from), to: place.get(element.to) }
    const row = place.get(element)
    if (element.kind === 'draw') inject({ right, ends, amps: element.drawA })
    else if (row !== undefined) stampRow(element, { left, right, ends, row })
    else if (element.kind === 'resistor') stampConductance({ left, ends, siemens: 1 / element.resistanceOhm })
  }
  return { nodes, rows, left, right }
}

function hasRow(element: PlainElement): element is Row {
  return element.kind === 'source' || (element.kind === 'resistor' && element.resistanceOhm < HARDLY_RESISTS_OHM)
}

/** Places of both ends among the unknowns; the 0 V node has none. */
interface Ends {
  readonly from: number | undefined
  readonly to: number | undefined
}

function inject({ right, ends, amps }: { readonly right: Matrix; readonly ends: Ends; readonly amps: number }): void {
  if (ends.from !== undefined) add(right, ends.from, 0, -amps)
  if (ends.to !== undefined) add(right, ends.to, 0, amps)
}

interface RowPlace {
  readonly left: Matrix
  readonly right: Matrix
  readonly ends: Ends
  readonly row: number
}

/** V(from) - V(to) - R·I = -E, and I leaves `from` for `to`. */
function stampRow(element: Row, { left, right, ends, row }: RowPlace): void {
  for (const [node, sign] of [
    [ends.from, 1],
    [ends.to, -1]
  ] as const) {
    if (node === undefined) continue
    add(left, node, row, sign)
    add(left, row, node, sign)
  }
  left.set(row, row, element.kind === 'source' ? -element.insideOhm : -element.resistanceOhm)
  right.set(row, 0, element.kind === 'source' ? -element.sourceV : 0)
}

function stampConductance({ left, ends, siemens }: { readonly left: Matrix; readonly ends: Ends; readonly siemens: number }): void {
  for (const [a, b] of [
    [ends.from, ends.to],
    [ends.to, ends.from]
  ]) {
    if (a === undefined) continue
    add(left, a, a, siemens)
    if (b !== undefined) add(left, a, b, -siemens)
  }
}

function add(matrix: Matrix, row: number, column: number, value: number): void {
  matrix.set(row, column, matrix.get(row, column) + value)
}
