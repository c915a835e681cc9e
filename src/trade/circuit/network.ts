import type { Given, Plain } from '../../formula/given.ts'

/** One thing between two nodes. Its current counts from `from` to `to`. */
export interface Branch {
  readonly id: string
  readonly from: string
  readonly to: string
}

/** Wire, joint, switch, fuse, or a load of constant resistance. No resistance at all makes it an ideal link. */
export interface Resistor extends Branch {
  readonly kind: 'resistor'
  readonly resistanceOhm: Given
}

/** A battery or a generator: plus at `to`, so that its current is positive while it delivers. */
export interface VoltageSource extends Branch {
  readonly kind: 'source'
  readonly sourceV: Given
  readonly insideOhm: Given
}

/** A load that draws a fixed current, whatever its voltage. */
export interface CurrentDraw extends Branch {
  readonly kind: 'draw'
  readonly drawA: Given
}

export type Element = Resistor | VoltageSource | CurrentDraw

export interface Network {
  /** The node of 0 V. */
  readonly ground: string
  readonly elements: readonly Element[]
}

export type PlainNetwork = Plain<Network>
export type PlainElement = Plain<Element>

/** What flows in one element: `dropV` is the voltage of `from` over `to`, `powerW` what it takes up; negative, it delivers. */
export interface Flow {
  readonly currentA: number
  readonly dropV: number
  readonly powerW: number
}

export interface Solution {
  /** Voltage of every node against the 0 V node. */
  readonly nodeV: { readonly [node: string]: number }
  readonly flows: { readonly [id: string]: Flow }
}

/** Every node, the 0 V node first, then in the order they are named. */
export function nodesOf({ ground, elements }: PlainNetwork): readonly string[] {
  const nodes = new Set([ground])
  for (const { from, to } of elements) nodes.add(from).add(to)
  return [...nodes]
}
