import { type At, BackwardsWatch } from './backwards-watch.ts'
import type { FactoredNetwork } from './factored-network.ts'
import type { FaultGiven } from './fault.ts'
import { FaultCurrents } from './fault-currents.ts'
import type { FaultEffects, FedBackwards, Opening, Overload } from './fault-effects.ts'
import type { PlainElement } from './network.ts'
import type { Change } from './network-changes.ts'
import { opensAt } from './opens-at.ts'

/** Above what a wire carries by more than rounding. */
const ABOVE = 1 + 1e-9
const MOST_OPENINGS = 8

/** What flows before anything has opened, and what that opens. */
interface First {
  readonly at: At
  readonly openings: readonly Opening[]
}

/** And what flows when it has. */
interface Ended {
  readonly at: At
  readonly end: At
  readonly opens: readonly Opening[]
}

/** One network under watch: what each change of it brings about. */
export class FaultWatch {
  private readonly given: FaultGiven
  private readonly factored: FactoredNetwork
  private readonly currents: FaultCurrents
  private readonly elements: ReadonlyMap<string, PlainElement>
  private readonly before: At
  private readonly backwards: BackwardsWatch

  constructor(given: FaultGiven, factored: FactoredNetwork) {
    this.given = given
    this.factored = factored
    this.currents = new FaultCurrents(factored)
    this.elements = new Map(factored.network.elements.map(element => [element.id, element]))
    this.before = this.currents.after([])
    this.backwards = new BackwardsWatch(factored.network, given, this.before)
  }

  voltsAt(node: string): number {
    return this.factored.nodeV(this.factored.unknowns, node)
  }

  effectsOf(change: Change): FaultEffects {
    const at = this.currents.after([change])
    const openings = this.openings(at)
    const { opens, end } = this.opened(change, { at, openings })
    return {
      currentsA: Object.fromEntries([...this.elements].map(([id, element]) => [id, at(element).currentA])),
      opens,
      doubtful: openings.filter(({ longestS }) => !Number.isFinite(longestS)),
      backwards: this.lasting(change, { at, end, opens }),
      overloads: this.overloads(at, end, opens),
      lost: this.given.loads.filter(id => Math.abs(at(this.element(id)).currentA) < Math.abs(this.before(this.element(id)).currentA) / 2)
    }
  }

  /** What it feeds as it should not, and nothing else of it. */
  backwardsOf(change: Change): readonly FedBackwards[] {
    const at = this.currents.after([change])
    if (this.backwards.after(change, at).length === 0) return []
    return this.lasting(change, { at, ...this.opened(change, { at, openings: this.openings(at) }) })
  }

  private element(id: string): PlainElement {
    const found = this.elements.get(id)
    if (found === undefined) throw new Error(`no element ${id} in this network`)
    return found
  }

  /** One protector after another, the quickest first, until none is left that must open. */
  private opened(change: Change, first: First): { readonly opens: readonly Opening[]; readonly end: At } {
    const made = [change]
    const opens: Opening[] = []
    let { at, openings } = first
    while (opens.length < MOST_OPENINGS) {
      const must = openings.filter(({ longestS }) => Number.isFinite(longestS))
      const next = must.sort((a, b) => a.longestS - b.longestS)[0]
      if (next === undefined || opens.some(({ id }) => id === next.id)) break
      opens.push(next)
      made.push({ kind: 'opened', element: this.element(next.id) })
      at = this.currents.after(made)
      openings = this.openings(at)
    }
    return { opens, end: at }
  }

  private openings(at: At): readonly Opening[] {
    return this.given.protectors.flatMap(protector => {
      const { id, ratingA } = protector
      const currentA = Math.abs(at(this.element(id)).currentA)
      const found = opensAt(protector, currentA)
      if (found !== null) return found.band === 'carries' ? [] : [{ id, currentA, shortestS: found.shortestS, longestS: found.longestS }]
      // No band is published for the style: above its rating it may open at once, and may not.
      return currentA > ratingA ? [{ id, currentA, shortestS: 0, longestS: Number.POSITIVE_INFINITY }] : []
    })
  }

  /** What is fed as it should not be, until what opens ends it. */
  private lasting(change: Change, { at, end, opens }: Ended): readonly FedBackwards[] {
    const first = this.backwards.after(change, at)
    if (first.length === 0) return []
    const last = opens.length === 0 ? first : this.backwards.after(change, end)
    const clearedS = clearedBy(opens)
    return first.map(({ id, how, dropV }) => {
      const stays = last.some(one => one.id === id)
      return { id, how, dropV, clearedS: stays ? Number.POSITIVE_INFINITY : clearedS }
    })
  }

  private overloads(at: At, end: At, opens: readonly Opening[]): readonly Overload[] {
    const clearedS = clearedBy(opens)
    return this.given.capacities.flatMap(({ id, ampacityA }) => {
      const [firstA, endA] = [at, end].map(one => Math.abs(one(this.element(id)).currentA)) as [number, number]
      const burns = endA > ampacityA * ABOVE
      if (!burns && firstA <= ampacityA * ABOVE) return []
      return [{ id, currentA: Math.max(firstA, endA), ampacityA, clearedS: burns ? Number.POSITIVE_INFINITY : clearedS }]
    })
  }
}

/** One after the other, at the latest. */
function clearedBy(opens: readonly Opening[]): number {
  return opens.reduce((sum, { longestS }) => sum + longestS, 0)
}
