import { fact } from '../../formula/formula.ts'
import type { Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { FactoredNetwork } from '../circuit/factored-network.ts'
import type { PlainElement, Resistor } from '../circuit/network.ts'
import type { Probe, Tested } from './probe.ts'

/** More than a hand meter shows: open. */
export const OVER_OHM = 6e7

/** What drives the known current has no more behind it: through an open path no such current flows. */
const TEST_SOURCE_V = 12

const LEAST_OHM = 1e-9

/** What a response is reckoned for. */
const RESPONSE_A = 1

type ColdPart = Plain<Resistor>

/** A circuit under the meter: solved once with the power on and once cold, however many readings are taken. Nothing is checked here. */
export class ProbedCircuit {
  readonly tested: Plain<Tested>
  private live: FactoredNetwork | undefined
  private coldParts: readonly ColdPart[] | undefined
  /** What hangs together once the sources are off, by each of its nodes. */
  private readonly islands = new Map<string, FactoredNetwork>()

  constructor(tested: Plain<Tested>) {
    this.tested = tested
  }

  /** What an ideal meter shows. */
  shown(probe: Probe): number {
    const { takes, passingA } = probe
    if (takes === 'ohms') return Math.min(OVER_OHM, this.readOhm(probe) + this.tested.leadsOhm)
    if (passingA !== null) return Math.min(TEST_SOURCE_V, passingA * this.betweenOhm(probe))
    const live = this.powered()
    if (takes === 'volts') return live.dropV(live.unknowns, { from: probe.red, to: probe.black })
    return joining(this.tested.network, probe).reduce(
      (sum, element) => sum + (element.from === probe.red ? 1 : -1) * live.currentA(live.unknowns, element),
      0
    )
  }

  /** Current of one element with the power on. */
  currentA(id: string): number {
    const live = this.powered()
    return live.currentA(live.unknowns, this.tested.network.elements.find(one => one.id === id)!)
  }

  /** From red to black through everything that joins them, cold and with the sources off. */
  betweenOhm({ red, black }: Pick<Probe, 'red' | 'black'>): number {
    const island = this.islandOf(black)
    if (island === undefined || this.islandOf(red) !== island) return OVER_OHM
    const throughOhm = island.dropV(island.response({ from: black, to: red }), { from: red, to: black }) / RESPONSE_A
    const facts = fact('throughOhm', {
      says: `from ${red} to ${black} through the circuit, its sources off`,
      symbol: 'R',
      source: SOURCES.kirchhoff
    })
    recordStep(facts, throughOhm, () => island.network.elements.map(({ id }) => id).join(', '))
    return throughOhm
  }

  /** Of the part that joins the two points, one lead of it taken off; where none does, of the whole circuit between them. */
  private readOhm(probe: Probe): number {
    const parts = joining({ elements: this.cold() }, probe)
    if (parts.length === 0) return this.betweenOhm(probe)
    return 1 / parts.reduce((sum, { resistanceOhm }) => sum + 1 / Math.max(LEAST_OHM, resistanceOhm), 0)
  }

  private powered(): FactoredNetwork {
    this.live ??= new FactoredNetwork(this.tested.network)
    return this.live
  }

  private cold(): readonly ColdPart[] {
    this.coldParts ??= coldPartsOf(this.tested)
    return this.coldParts
  }

  private islandOf(node: string): FactoredNetwork | undefined {
    const known = this.islands.get(node)
    if (known !== undefined) return known
    const { nodes, elements } = reachable(this.cold(), node)
    if (elements.length === 0) return undefined
    const island = new FactoredNetwork({ ground: node, elements })
    for (const one of nodes) this.islands.set(one, island)
    return island
  }
}

/** What joins the two points of a probe directly. */
export function joining<E extends { readonly from: string; readonly to: string }>(
  { elements }: { readonly elements: readonly E[] },
  { red, black }: Pick<Probe, 'red' | 'black'>
): readonly E[] {
  return elements.filter(({ from, to }) => (from === red && to === black) || (from === black && to === red))
}

/** Everything that has a resistance, cold. */
function coldPartsOf({ network, colds }: Plain<Tested>): readonly ColdPart[] {
  return network.elements.flatMap(element => {
    if (element.kind !== 'resistor') return []
    const cold = colds.find(({ id }) => id === element.id)
    return [cold === undefined ? element : { ...element, resistanceOhm: cold.coldFactor * element.resistanceOhm }]
  })
}

/** The elements that hang together with a node, and the nodes they join. */
function reachable<E extends Pick<PlainElement, 'from' | 'to'>>(elements: readonly E[], start: string) {
  const nodes = new Set([start])
  for (let before = 0; before < nodes.size; ) {
    before = nodes.size
    for (const { from, to } of elements) {
      if (nodes.has(from)) nodes.add(to)
      if (nodes.has(to)) nodes.add(from)
    }
  }
  return { nodes, elements: elements.filter(({ from }) => nodes.has(from)) }
}
