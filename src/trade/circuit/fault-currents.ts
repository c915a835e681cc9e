import { tiedNetwork } from './dead-parts.ts'
import { FactoredNetwork } from './factored-network.ts'
import type { PlainElement } from './network.ts'
import { type Change, NetworkChanges } from './network-changes.ts'

/** What flows in an element, and what stands across it. */
export interface Through {
  readonly currentA: number
  readonly dropV: number
}

/** Currents of a network after a few changes: by the factors it has, and anew only where a part is left without a path. */
export class FaultCurrents {
  private readonly changes: NetworkChanges

  constructor(factored: FactoredNetwork) {
    this.changes = new NetworkChanges(factored)
  }

  after(made: readonly Change[]): (element: PlainElement) => Through {
    const { factored } = this.changes
    const unknowns = this.changes.after(made)
    const gone = new Set(made.flatMap(change => (change.kind === 'opened' ? [change.element] : [])))
    if (unknowns === undefined) return this.anewAfter(made)
    return element => ({
      currentA: gone.has(element) ? 0 : factored.currentA(unknowns, element),
      dropV: factored.dropV(unknowns, element)
    })
  }

  private anewAfter(made: readonly Change[]): (element: PlainElement) => Through {
    const network = tiedNetwork(this.changes.factored.network, made)
    const factored = new FactoredNetwork(network)
    const alive = new Set(network.elements)
    return element => ({
      currentA: alive.has(element) ? factored.currentA(factored.unknowns, element) : 0,
      dropV: factored.dropV(factored.unknowns, element)
    })
  }
}
