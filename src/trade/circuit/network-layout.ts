import { nodesOf, type PlainElement, type PlainNetwork } from './network.ts'

/** Where everything of a network stands among the unknowns: node voltages but that of the 0 V node, then currents of the elements that have a row. */
export interface Layout {
  readonly nodes: readonly string[]
  readonly size: number
  readonly nodeAt: ReadonlyMap<string, number>
  readonly rowAt: ReadonlyMap<string, number>
  /** Of every element in its order: both ends and its own row. */
  readonly from: readonly number[]
  readonly to: readonly number[]
  readonly row: readonly number[]
}

/** The 0 V node, and the current of an element without a row, are no unknowns. */
export const KNOWN = -1

/** Below this a wire or a joint is written as a source of 0 V is: 1/R would swamp the other entries and make a current of mere rounding. */
const HARDLY_RESISTS_OHM = 0.01

export function layoutOf(network: PlainNetwork): Layout {
  const { elements } = network
  const nodes = nodesOf(network).slice(1)
  const nodeAt = new Map(nodes.map((node, i) => [node, i]))
  const rows = elements.filter(hasRow)
  const rowAt = new Map(rows.map(({ id }, i) => [id, nodes.length + i]))
  return {
    nodes,
    size: nodes.length + rows.length,
    nodeAt,
    rowAt,
    from: elements.map(({ from }) => nodeAt.get(from) ?? KNOWN),
    to: elements.map(({ to }) => nodeAt.get(to) ?? KNOWN),
    row: elements.map(({ id }) => rowAt.get(id) ?? KNOWN)
  }
}

/** Whether the current of an element is an unknown of its own. */
export function hasRow(element: PlainElement): boolean {
  return element.kind === 'source' || (element.kind === 'resistor' && element.resistanceOhm < HARDLY_RESISTS_OHM)
}
