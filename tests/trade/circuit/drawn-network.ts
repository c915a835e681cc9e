import type { PlainElement, PlainNetwork } from '../../../src/trade/circuit/network.ts'

/** Evenly spread numbers from a seed (mulberry32), the same on every machine. */
function dice(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export const SHAPES = ['ladder', 'shared return', 'bridges', 'several sources'] as const
export type Shape = (typeof SHAPES)[number]

interface Hand {
  readonly roll: () => number
  readonly elements: PlainElement[]
}

const between = ({ roll }: Hand, least: number, greatest: number) => least * (greatest / least) ** roll()

function add(hand: Hand, kind: 'wire' | 'load', from: string, to: string): void {
  const resistanceOhm = kind === 'wire' ? between(hand, 0.001, 0.5) : between(hand, 0.5, 60)
  hand.elements.push({ kind: 'resistor', id: `${kind} ${hand.elements.length}`, from, to, resistanceOhm })
}

function source(hand: Hand, to: string): void {
  const [sourceV, insideOhm] = [between(hand, 6, 48), hand.roll() < 0.3 ? 0 : between(hand, 0.001, 0.1)]
  hand.elements.push({ kind: 'source', id: `source ${hand.elements.length}`, from: 'frame', to, sourceV, insideOhm })
}

/** A network as machines have them, of so many nodes beside the 0 V node; the values are invented. */
function drawnNetwork({ seed, shape, nodes }: { readonly seed: number; readonly shape: Shape; readonly nodes: number }): PlainNetwork {
  const hand: Hand = { roll: dice(seed), elements: [] }
  source(hand, 'n1')
  DRAW[shape](hand, nodes)
  return { ground: 'frame', elements: hand.elements }
}

const DRAW: { readonly [S in Shape]: (hand: Hand, nodes: number) => void } = {
  ladder: (hand, nodes) => {
    for (let i = 2; i <= nodes; i++) {
      add(hand, 'wire', `n${i - 1}`, `n${i}`)
      add(hand, 'load', `n${i}`, 'frame')
    }
  },
  'shared return': (hand, nodes) => {
    const half = Math.max(1, Math.floor(nodes / 2))
    for (let i = 2; i <= nodes; i++) add(hand, 'wire', i === half + 1 ? 'frame' : `n${i - 1}`, `n${i}`)
    for (let i = 2; i <= half; i++) add(hand, 'load', `n${i}`, `n${Math.min(nodes, half + i)}`)
    if (hand.roll() < 0.7) hand.elements.push({ kind: 'draw', id: 'draw', from: 'n1', to: `n${nodes}`, drawA: between(hand, 0.1, 30) })
  },
  bridges: (hand, nodes) => {
    for (let i = 2; i <= nodes; i++) add(hand, hand.roll() < 0.5 ? 'wire' : 'load', `n${1 + Math.floor(hand.roll() * (i - 1))}`, `n${i}`)
    for (let i = 0; i < nodes; i++) {
      const from = Math.floor(hand.roll() * (nodes + 1))
      const to = (from + 1 + Math.floor(hand.roll() * nodes)) % (nodes + 1)
      add(hand, hand.roll() < 0.3 ? 'wire' : 'load', from === 0 ? 'frame' : `n${from}`, to === 0 ? 'frame' : `n${to}`)
    }
  },
  'several sources': (hand, nodes) => {
    for (let i = 2; i <= nodes; i++) {
      add(hand, 'wire', `n${i - 1}`, `n${i}`)
      if (i % 3 === 0) add(hand, 'load', `n${i}`, 'frame')
      // A battery or generator of its own behind a resistance: no two sources stand on one node without any.
      if (i % 7 === 0) {
        add(hand, 'wire', `n${i}`, `b${i}`)
        source(hand, `b${i}`)
      }
    }
  }
}

/** So many networks, of every shape in turn and from 3 to 60 nodes. */
export function drawnNetworks(count: number): readonly PlainNetwork[] {
  return Array.from({ length: count }, (_, i) =>
    drawnNetwork({ seed: 7000 + i, shape: SHAPES[i % SHAPES.length]!, nodes: 3 + ((i * 19) % 50) })
  )
}
