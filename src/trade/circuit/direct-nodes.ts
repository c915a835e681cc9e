import type { PlainNetwork } from './network.ts'
import type { Change } from './network-changes.ts'

/**
 * Nodes that wires, joints and sources alone tie to the 0 V node. A load between two other nodes, or one of them, has its current
 * only through another load.
 */
export function directNodes({ ground, elements }: PlainNetwork, loads: ReadonlySet<string>, change?: Change): ReadonlySet<string> {
  const neighbours = new Map<string, string[]>()
  const tie = (a: string, b: string) => neighbours.set(a, [...(neighbours.get(a) ?? []), b])
  for (const element of elements) {
    if (loads.has(element.id) || element.kind === 'draw' || (change?.kind === 'opened' && change.element === element)) continue
    tie(element.from, element.to)
    tie(element.to, element.from)
  }
  if (change?.kind === 'joined') {
    tie(change.from, change.to)
    tie(change.to, change.from)
  }
  const found = new Set([ground])
  for (const node of found) for (const next of neighbours.get(node) ?? []) found.add(next)
  return found
}
