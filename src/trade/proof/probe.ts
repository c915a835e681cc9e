import type { Given, Plain } from '../../formula/given.ts'
import type { Network, PlainElement, PlainNetwork } from '../circuit/network.ts'
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

/** What an ideal meter shows at each test point. */
export function probed(tested: Plain<Tested>, probes: readonly Probe[]): number[] {
  const live = probes.some(isLive) ? solveNetwork(tested.network) : undefined
  return probes.map(probe => {
    const { takes, red, black, passingA } = probe
    if (takes === 'ohms') return Math.min(OVER_OHM, coldOhm(tested, probe) + tested.leadsOhm)
    if (passingA !== null) return passingA * betweenOhm(tested.network, probe)
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

/** One lead of the part is taken off for this: what else joins the two points does not count. */
function coldOhm({ network, colds }: Plain<Tested>, probe: Probe): number {
  const siemens = joining(network, probe).map(element => {
    const coldFactor = colds.find(({ id }) => id === element.id)?.coldFactor ?? 1
    return element.kind === 'resistor' ? 1 / Math.max(1e-9, coldFactor * element.resistanceOhm) : 0
  })
  return 1 / siemens.reduce((sum, one) => sum + one, 1 / OVER_OHM / 1000)
}

/** Resistance from red to black through the whole circuit with its sources off. */
function betweenOhm({ elements }: PlainNetwork, { red, black }: Probe): number {
  const passive = reachable(
    elements.filter(({ kind }) => kind === 'resistor'),
    black
  )
  const inside = passive.some(({ from, to }) => from === red || to === red)
  if (!inside) return OVER_OHM
  const draw = { kind: 'draw', id: 'test current', from: black, to: red, drawA: 1 } as const
  return solveNetwork({ ground: black, elements: [...passive, draw] }).nodeV[red]!
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
