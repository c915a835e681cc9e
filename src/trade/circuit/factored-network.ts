import { LuFactors } from './lu-factors.ts'
import type { Flow, PlainElement, PlainNetwork, Solution } from './network.ts'
import { type Equations, equationsOf } from './nodal-equations.ts'

/** Every unknown of a network: node voltages but that of the 0 V node, then currents of the rows. */
export type Unknowns = Float64Array

/** The equations of a network taken apart once, so that another current or another element costs one more substitution and no more. */
export class FactoredNetwork {
  readonly network: PlainNetwork
  /** With the network as it stands. */
  readonly unknowns: Unknowns
  private readonly equations: Equations
  private readonly factors: LuFactors

  constructor(network: PlainNetwork) {
    this.network = network
    this.equations = equationsOf(network)
    this.factors = new LuFactors(this.equations.left)
    this.unknowns = this.factors.solve(this.equations.right)
  }

  /** By how much every unknown changes for each ampere that is taken out of one node and put into another. */
  response({ from, to }: Pick<PlainElement, 'from' | 'to'>): Unknowns {
    const right = new Float64Array(this.unknowns.length)
    const [out, into] = [this.equations.place.get(from), this.equations.place.get(to)]
    if (out !== undefined) right[out]! -= 1
    if (into !== undefined) right[into]! += 1
    return this.factors.solve(right)
  }

  /** By how much every unknown changes for each volt that is put in series with an element that has a current of its own. */
  seriesResponse(element: PlainElement): Unknowns | undefined {
    const place = this.equations.place.get(element)
    if (place === undefined) return undefined
    const right = new Float64Array(this.unknowns.length)
    right[place] = 1
    return this.factors.solve(right)
  }

  /** Voltage of one node over another. */
  dropV(unknowns: Unknowns, { from, to }: Pick<PlainElement, 'from' | 'to'>): number {
    return this.nodeV(unknowns, from) - this.nodeV(unknowns, to)
  }

  nodeV(unknowns: Unknowns, node: string): number {
    const place = this.equations.place.get(node)
    return place === undefined ? 0 : unknowns[place]!
  }

  /** What of the unknowns is the current of an element; fixed currents and sources do not respond, so they are left out there. */
  currentA(unknowns: Unknowns, element: PlainElement, of: 'whole' | 'response' = 'whole'): number {
    const place = this.equations.place.get(element)
    if (place !== undefined) return unknowns[place]!
    if (element.kind === 'draw') return of === 'whole' ? element.drawA : 0
    return this.dropV(unknowns, element) / ohmOf(element)
  }

  /** What flows in one element of the network as it stands. */
  flowOf(id: string): Flow {
    return this.flow(this.unknowns, this.network.elements.find(element => element.id === id)!)
  }

  solutionOf(unknowns: Unknowns): Solution {
    const { ground, elements } = this.network
    const volts = [[ground, 0], ...this.equations.nodes.map((node, i) => [node, unknowns[i]!] as const)] as const
    const flows = elements.map(element => [element.id, this.flow(unknowns, element)] as const)
    return { nodeV: Object.fromEntries(volts), flows: Object.fromEntries(flows) }
  }

  private flow(unknowns: Unknowns, element: PlainElement): Flow {
    const dropV = this.dropV(unknowns, element)
    const currentA = this.currentA(unknowns, element)
    return { currentA, dropV, powerW: dropV * currentA }
  }
}

function ohmOf(element: Exclude<PlainElement, { readonly kind: 'draw' }>): number {
  return element.kind === 'source' ? element.insideOhm : element.resistanceOhm
}
