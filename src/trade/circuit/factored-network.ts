import { LuFactors } from './lu-factors.ts'
import type { Flow, PlainElement, PlainNetwork, Solution } from './network.ts'
import { KNOWN, type Layout, layoutOf } from './network-layout.ts'
import { equationsOf, inject } from './nodal-equations.ts'

/** Every unknown of a network: node voltages but that of the 0 V node, then currents of the rows. */
export type Unknowns = Float64Array

/** The equations of a network taken apart once, so that another current or another element costs one more substitution and no more. */
export class FactoredNetwork {
  readonly network: PlainNetwork
  /** With the network as it stands. */
  readonly unknowns: Unknowns
  private readonly layout: Layout
  private readonly factors: LuFactors

  /** `layout`: where it is known already, from a network that differs by its numbers alone. */
  constructor(network: PlainNetwork, layout: Layout = layoutOf(network)) {
    this.network = network
    this.layout = layout
    const { left, right } = equationsOf(network, layout)
    this.factors = new LuFactors(left)
    this.unknowns = this.factors.solve(right)
  }

  /** By how much every unknown changes for each ampere that is taken out of one node and put into another. */
  response({ from, to }: Pick<PlainElement, 'from' | 'to'>): Unknowns {
    const right = new Float64Array(this.layout.size)
    inject(right, { from: this.nodeAt(from), to: this.nodeAt(to) }, 1)
    return this.factors.solve(right)
  }

  /** By how much every unknown changes for each volt that is put in series with an element that has a current of its own. */
  seriesResponse({ id }: PlainElement): Unknowns | undefined {
    const row = this.layout.rowAt.get(id)
    if (row === undefined) return undefined
    const right = new Float64Array(this.layout.size)
    right[row] = 1
    return this.factors.solve(right)
  }

  /** Voltage of one node over another. */
  dropV(unknowns: Unknowns, { from, to }: Pick<PlainElement, 'from' | 'to'>): number {
    return this.nodeV(unknowns, from) - this.nodeV(unknowns, to)
  }

  nodeV(unknowns: Unknowns, node: string): number {
    return voltsAt(unknowns, this.nodeAt(node))
  }

  /** What of the unknowns is the current of an element; fixed currents and sources do not respond, so they are left out there. */
  currentA(unknowns: Unknowns, element: PlainElement, of: 'whole' | 'response' = 'whole'): number {
    const row = this.layout.rowAt.get(element.id)
    if (row !== undefined) return unknowns[row]!
    if (element.kind === 'draw') return of === 'whole' ? element.drawA : 0
    return this.dropV(unknowns, element) / ohmOf(element)
  }

  /** What flows in one element of the network as it stands, by its number there. */
  flowAt(i: number): Flow {
    const { unknowns, layout } = this
    const dropV = voltsAt(unknowns, layout.from[i]!) - voltsAt(unknowns, layout.to[i]!)
    const currentA = this.ownA(i, dropV)
    return { currentA, dropV, powerW: dropV * currentA }
  }

  /** The network as it stands. */
  solution(): Solution {
    const { ground, elements } = this.network
    const volts = [[ground, 0], ...this.layout.nodes.map((node, i) => [node, this.unknowns[i]!] as const)] as const
    const flows = elements.map(({ id }, i) => [id, this.flowAt(i)] as const)
    return { nodeV: Object.fromEntries(volts), flows: Object.fromEntries(flows) }
  }

  private ownA(i: number, dropV: number): number {
    const row = this.layout.row[i]!
    if (row !== KNOWN) return this.unknowns[row]!
    const element = this.network.elements[i]!
    return element.kind === 'draw' ? element.drawA : dropV / ohmOf(element)
  }

  private nodeAt(node: string): number {
    return this.layout.nodeAt.get(node) ?? KNOWN
  }
}

function voltsAt(unknowns: Unknowns, node: number): number {
  return node === KNOWN ? 0 : unknowns[node]!
}

function ohmOf(element: Exclude<PlainElement, { readonly kind: 'draw' }>): number {
  return element.kind === 'source' ? element.insideOhm : element.resistanceOhm
}
