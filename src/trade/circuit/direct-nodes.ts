import type { PlainElement, PlainNetwork } from './network.ts'
import { spread } from './spread.ts'

/**
 * Nodes that wires, joints and sources alone tie to the 0 V node. A load between two other nodes, or one of them, has its current
 * only through another load.
 */
export function directNodes({ ground, elements }: PlainNetwork, loads: ReadonlySet<string>, opened?: PlainElement): ReadonlySet<string> {
  return spread(
    ground,
    elements.filter(element => element !== opened && element.kind !== 'draw' && !loads.has(element.id))
  )
}
