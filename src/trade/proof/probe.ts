import { fact } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep, silently } from '../../formula/working.ts'
import type { Network, PlainElement, Resistor } from '../circuit/network.ts'
import { solveNetwork } from '../circuit/solve-network.ts'
import type { Takes } from './reading-unit.ts'

/** Where a meter is put: red lead first. Amps count from red to black through what joins the two. */
export interface Probe {
  readonly takes: Takes
  readonly red: string
  readonly black: string
  /** Power off, and this current passed from red to black from outside; null with the power on. */
  readonly passingA: number | null
}

/** A circuit as it is put to the test: with what only shows on the bench. */
export interface Tested {
  readonly network: Network
  /** Of both test leads together; a two-wire reading of ohms holds it. */
  readonly leadsOhm: Given
  /** Resistance cold over resistance hot, of the elements that differ. */
  readonly colds: readonly { readonly id: string; readonly coldFactor: Given }[]
}

/** More than a hand meter shows: open. */
export const OVER_OHM = 6e7

/** What drives the known current has no more behind it: through an open path no such current flows. */
const TEST_SOURCE_V = 12

/** What an ideal meter shows at each test point. */
export function probed(tested: Plain<Tested>, probes: readonly Probe[]): number[] {
  const live = probes.some(isLive) ? solveNetwork(tested.network) : undefined
  return probes.map(probe => {
    const { takes, red, black, passingA } = probe
    if (takes === 'ohms') return Math.min(OVER_OHM, readOhm(tested, probe) + tested.leadsOhm)
    if (passingA !== null) return Math.min(TEST_SOURCE_V, passingA * betweenOhm(tested, probe))
    if (takes === 'volts') return live!.nodeV[red]! - live!.nodeV[black]!
    return joining(tested.network, probe).reduce((sum, { id, from }) => sum + (from === red ? 1 : -1) * live!.flows[id]!.currentA, 0)
  })
}

/** Taken with the power on. */
export function isLive({ takes, passingA }: Probe): boolean {
  return takes !== 'ohms' && passingA === null
}

/** What joins the two points of a probe directly. */
export function joining<E extends { readonly from: string; readonly to: string }>(
  { elements }: { readonly elements: readonly E[] },
  { red, black }: Pick<Probe, 'red' | 'black'>
): readonly E[] {
  return elements.filter(({ from, to }) => (from === red && to === black) || (from === black && to === red))
}

/** Of the part that joins the two points, one lead of it taken off; where none does, of the whole circuit between them. */
function readOhm(tested: Plain<Tested>, probe: Probe): number {
  const parts = joining({ elements: coldParts(tested) }, probe)
  if (parts.length === 0) return betweenOhm(tested, probe)
  return 1 / parts.reduce((sum, { resistanceOhm }) => sum + 1 / Math.max(LEAST_OHM, resistanceOhm), 0)
}

const LEAST_OHM = 1e-9

/** Everything that has a resistance, cold. */
function coldParts({ network, colds }: Plain<Tested>): readonly Plain<Resistor>[] {
  return network.elements.flatMap(element => {
    if (element.kind !== 'resistor') return []
    const coldFactor = colds.find(({ id }) => id === element.id)?.coldFactor ?? 1
    return [{ ...element, resistanceOhm: coldFactor * element.resistanceOhm }]
  })
}

/** Resistance from red to black through the whole circuit, cold and with its sources off. */
function betweenOhm(tested: Plain<Tested>, { red, black }: Probe): number {
  const passive = reachable(coldParts(tested), black)
  const inside = passive.some(({ from, to }) => from === red || to === red)
  if (!inside) return OVER_OHM
  const draw = { kind: 'draw', id: 'test current', from: black, to: red, drawA: 1 } as const
  const throughOhm = silently(() => solveNetwork({ ground: black, elements: [...passive, draw] }).nodeV[red]!)
  const facts = fact('throughOhm', {
    says: `from ${red} to ${black} through the circuit, its sources off`,
    symbol: 'R',
    source: SOURCES.kirchhoff
  })
  recordStep(facts, throughOhm, () => passive.map(({ id }) => id).join(', '))
  return throughOhm
}

/** The elements that hang together with a node. */
function reachable(elements: readonly PlainElement[], start: string): readonly PlainElement[] {
  const nodes = new Set([start])
  for (let before = 0; before < nodes.size; ) {
    before = nodes.size
    for (const { from, to } of elements) {
      if (nodes.has(from)) nodes.add(to)
      if (nodes.has(to)) nodes.add(from)
    }
  }
  return elements.filter(({ from }) => nodes.has(from))
}
