import type { PlainNetwork } from './network.ts'
import type { Change } from './network-changes.ts'
import { spread, type Tie } from './spread.ts'

/**
 * Nodes that wires, joints and sources alone tie to the 0 V node. A load between two other nodes, or one of them, has its current
 * only through another load.
 */
export function directNodes({ ground, elements }: PlainNetwork, loads: ReadonlySet<string>, change?: Change): ReadonlySet<string> {
  const opened = change?.kind === 'opened' ? change.element : undefined
  const ties: Tie[] = elements.filter(element => element !== opened && element.kind !== 'draw' && !loads.has(element.id))
  return spread(ground, change?.kind === 'joined' ? [...ties, change] : ties)
}
