import type { Plain } from '../../formula/given.ts'
import { nodesOf, type PlainElement, type PlainNetwork, type Resistor, type VoltageSource } from './network.ts'

/** An element whose current is an unknown of its own. */
type Row = Plain<Resistor | VoltageSource>

/** Modified nodal analysis: the unknowns are the node voltages but that of the 0 V node, then the currents of the rows. */
export interface Equations {
  readonly nodes: readonly string[]
  readonly rows: readonly Row[]
  /** Where each stands among the unknowns. */
  readonly place: ReadonlyMap<string | PlainElement, number>
  /** Row by row. */
  readonly left: Float64Array
  readonly right: Float64Array
}

/** Below this a wire or a joint is written as a source of 0 V is: 1/R would swamp the other entries and make a current of mere rounding. */
const HARDLY_RESISTS_OHM = 0.01

export function equationsOf(network: PlainNetwork): Equations {
  const nodes = nodesOf(network).slice(1)
  const rows = network.elements.filter(hasRow)
  const size = nodes.length + rows.length
  const [left, right] = [new Float64Array(size * size), new Float64Array(size)]
  const place = new Map<string | PlainElement, number>()
  for (const unknown of [...nodes, ...rows]) place.set(unknown, place.size)
  for (const element of network.elements) {
    const ends = { from: place.get(element.from), to: place.get(element.to) }
    const row = place.get(element)
    if (element.kind === 'draw') inject({ right, ends, amps: element.drawA })
    else if (row !== undefined) stampRow(element, { left, right, ends, row })
    else if (element.kind === 'resistor') stampConductance({ left, right, ends, siemens: 1 / element.resistanceOhm })
  }
  return { nodes, rows, place, left, right }
}

function hasRow(element: PlainElement): element is Row {
  return element.kind === 'source' || (element.kind === 'resistor' && element.resistanceOhm < HARDLY_RESISTS_OHM)
}

/** Places of both ends among the unknowns; the 0 V node has none. */
interface Ends {
  readonly from: number | undefined
  readonly to: number | undefined
}

function inject({ right, ends, amps }: { readonly right: Float64Array; readonly ends: Ends; readonly amps: number }): void {
  if (ends.from !== undefined) right[ends.from]! -= amps
  if (ends.to !== undefined) right[ends.to]! += amps
}

interface RowPlace {
  readonly left: Float64Array
  readonly right: Float64Array
  readonly ends: Ends
  readonly row: number
}

/** V(from) - V(to) - R·I = -E, and I leaves `from` for `to`. */
function stampRow(element: Row, { left, right, ends, row }: RowPlace): void {
  const size = right.length
  for (const [node, sign] of [
    [ends.from, 1],
    [ends.to, -1]
  ] as const) {
    if (node === undefined) continue
    left[node * size + row]! += sign
    left[row * size + node]! += sign
  }
  left[row * size + row] = element.kind === 'source' ? -element.insideOhm : -element.resistanceOhm
  right[row] = element.kind === 'source' ? -element.sourceV : 0
}

function stampConductance({ left, right, ends, siemens }: Omit<RowPlace, 'row'> & { readonly siemens: number }): void {
  for (const [a, b] of [
    [ends.from, ends.to],
    [ends.to, ends.from]
  ]) {
    if (a === undefined) continue
    left[a * right.length + a]! += siemens
    if (b !== undefined) left[a * right.length + b]! -= siemens
  }
}
