import type { PlainElement, PlainNetwork } from './network.ts'
import { KNOWN, type Layout } from './network-layout.ts'

/** Modified nodal analysis: a law for every node but that of 0 V, and for every element that has a row. */
export interface Equations {
  /** Row by row. */
  readonly left: Float64Array
  readonly right: Float64Array
}

export function equationsOf({ elements }: PlainNetwork, { size, from, to, row }: Layout): Equations {
  const equations = { left: new Float64Array(size * size), right: new Float64Array(size) }
  for (let i = 0; i < elements.length; i++) stamp(elements[i]!, equations, { from: from[i]!, to: to[i]!, row: row[i]! })
  return equations
}

/** Where one element stands among the unknowns. */
interface Place {
  readonly from: number
  readonly to: number
  readonly row: number
}

function stamp(element: PlainElement, equations: Equations, place: Place): void {
  if (element.kind === 'draw') inject(equations.right, place, element.drawA)
  else if (element.kind === 'source') stampRow(equations, place, element.insideOhm, element.sourceV)
  else if (place.row !== KNOWN) stampRow(equations, place, element.resistanceOhm, 0)
  else stampConductance(equations, place, 1 / element.resistanceOhm)
}

/** A current that leaves one node and enters another, whatever their voltages. */
export function inject(right: Float64Array, { from, to }: Pick<Place, 'from' | 'to'>, amps: number): void {
  if (from !== KNOWN) right[from]! -= amps
  if (to !== KNOWN) right[to]! += amps
}

/** V(from) - V(to) - R·I = -E, and I leaves `from` for `to`. */
function stampRow({ left, right }: Equations, { from, to, row }: Place, ohm: number, sourceV: number): void {
  stampEnd(left, right.length, from, row, 1)
  stampEnd(left, right.length, to, row, -1)
  left[row * right.length + row] = -ohm
  right[row] = 0 - sourceV
}

function stampEnd(left: Float64Array, size: number, node: number, row: number, sign: 1 | -1): void {
  if (node === KNOWN) return
  left[node * size + row]! += sign
  left[row * size + node]! += sign
}

function stampConductance({ left, right }: Equations, { from, to }: Place, siemens: number): void {
  const size = right.length
  if (from !== KNOWN) left[from * size + from]! += siemens
  if (to !== KNOWN) left[to * size + to]! += siemens
  if (from === KNOWN || to === KNOWN) return
  left[from * size + to]! -= siemens
  left[to * size + from]! -= siemens
}
