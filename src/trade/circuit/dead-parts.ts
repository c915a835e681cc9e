import { floatingParts } from './floating-parts.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import type { Change } from './network-changes.ts'

/** Any resistance: a part that is tied at one point alone carries nothing through the tie. */
const TIE_OHM = 1

/**
 * A network after changes that may leave parts of it without a path. Such a part keeps its own currents; its voltage against
 * the rest is anything, so it is tied at one point. A load of fixed current with no way back takes nothing.
 */
export function tiedNetwork({ ground, elements }: PlainNetwork, changes: readonly Change[]): PlainNetwork {
  const gone = new Set(changes.flatMap(change => (change.kind === 'opened' ? [change.element.id] : [])))
  const joins = changes.flatMap((change, i): readonly PlainElement[] =>
    change.kind === 'joined' ? [{ ...change, kind: 'resistor', id: `join ${i}` }] : []
  )
  const left = [...elements.filter(({ id }) => !gone.has(id)), ...joins]
  const parts = floatingParts({ ground, elements: left })
  const partOf = (node: string) => parts.findIndex(part => part.includes(node))
  const alive = left.filter(({ kind, from, to }) => kind !== 'draw' || partOf(from) === partOf(to))
  const nodes = new Set(alive.flatMap(({ from, to }) => [from, to]))
  const ties = parts.flatMap((part, i): readonly PlainElement[] => {
    const node = part.find(one => nodes.has(one))
    return node === undefined ? [] : [{ kind: 'resistor', id: `tie ${i}`, from: node, to: ground, resistanceOhm: TIE_OHM }]
  })
  return { ground, elements: [...alive, ...ties] }
}
