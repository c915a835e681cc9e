import { bridgedLoads } from './bridged-loads.ts'
import { directNodes } from './direct-nodes.ts'
import type { FactoredNetwork } from './factored-network.ts'
import type { FaultGiven } from './fault.ts'
import { FaultCurrents, type Through } from './fault-currents.ts'
import type { FaultEffects, FedBackwards, Opening, Overload } from './fault-effects.ts'
import type { PlainElement } from './network.ts'
import type { Change } from './network-changes.ts'
import { opensAt } from './opens-at.ts'

type At = (element: PlainElement) => Through

/** Less than this share of the current that a load had is nothing. */
const NOTHING = 0.01
/** A load with less than this share of the greatest voltage over any is off: what is left is the shift of its ground. */
const OFF = 0.05
/** Of the greatest source: what stands over a load is no more than rounding. */
const ROUNDING = 1e-9
/** Above what a wire carries by more than rounding. */
const ABOVE = 1 + 1e-9
const MOST_OPENINGS = 8

/** What flows before anything has opened, and what that opens. */
interface First {
  readonly at: At
  readonly openings: readonly Opening[]
}

/** One network under watch: what each change of it brings about. */
export class FaultWatch {
  private readonly given: FaultGiven
  private readonly factored: FactoredNetwork
  private readonly currents: FaultCurrents
  private readonly elements: ReadonlyMap<string, PlainElement>
  private readonly loads: ReadonlySet<string>
  private readonly direct: ReadonlySet<string>
  /** Loads but those that wires lead round: a bridge is no switch that is off, and in series with the bridge off is how they are meant. */
  private readonly unbridged: ReadonlySet<string>
  private readonly before: At
  private readonly offV: number

  constructor(given: FaultGiven, factored: FactoredNetwork) {
    this.given = given
    this.factored = factored
    this.currents = new FaultCurrents(factored)
    this.elements = new Map(factored.network.elements.map(element => [element.id, element]))
    this.loads = new Set(given.loads)
    const bridged = bridgedLoads(factored.network, this.loads)
    this.unbridged = new Set(given.loads.filter(id => !bridged.has(id)))
    this.direct = directNodes(factored.network, this.unbridged)
    this.before = this.currents.after([])
    this.offV = Math.max(
      ROUNDING * Math.max(0, ...factored.network.elements.map(element => (element.kind === 'source' ? Math.abs(element.sourceV) : 0))),
      OFF * Math.max(0, ...given.loads.map(id => Math.abs(this.before(this.element(id)).dropV)))
    )
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
      backwards: this.backwards(change, at),
      overloads: this.overloads(at, end, opens),
      lost: this.given.loads.filter(id => Math.abs(at(this.element(id)).currentA) < Math.abs(this.before(this.element(id)).currentA) / 2)
    }
  }

  /** What it feeds as it should not, and nothing else of it. */
  backwardsOf(change: Change): readonly FedBackwards[] {
    return this.backwards(change, this.currents.after([change]))
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

  /** Loads whose current turned round, that were off and are not, and that had it straight from the source and now have it through another load. */
  private backwards(change: Change, at: At): readonly FedBackwards[] {
    // What joins two nodes takes no straight way from any load.
    const direct = change.kind === 'joined' ? this.direct : directNodes(this.factored.network, this.unbridged, change.element)
    const straight = (nodes: ReadonlySet<string>, { from, to }: PlainElement) => nodes.has(from) && nodes.has(to)
    // What stands over a load that is itself open is the voltage over the break.
    const whole = this.given.loads.filter(id => change.kind === 'joined' || id !== change.element.id)
    return whole.flatMap((id): readonly FedBackwards[] => {
      const element = this.element(id)
      const { currentA, dropV } = at(element)
      const before = this.before(element)
      if (Math.abs(before.dropV) <= this.offV)
        return Math.abs(dropV) <= this.offV || !this.unbridged.has(id)
          ? []
          : [{ id, how: dropV < 0 ? 'reversed' : 'though switched off', dropV }]
      const share = currentA / before.currentA
      if (!(Math.abs(share) > NOTHING)) return []
      if (share < 0) return [{ id, how: 'reversed', dropV }]
      return straight(this.direct, element) && !straight(direct, element) ? [{ id, how: 'through another load', dropV }] : []
    })
  }

  private overloads(at: At, end: At, opens: readonly Opening[]): readonly Overload[] {
    const clearedS = opens.reduce((sum, { longestS }) => sum + longestS, 0)
    return this.given.capacities.flatMap(({ id, ampacityA }) => {
      const [firstA, endA] = [at, end].map(one => Math.abs(one(this.element(id)).currentA)) as [number, number]
      const burns = endA > ampacityA * ABOVE
      if (!burns && firstA <= ampacityA * ABOVE) return []
      return [{ id, currentA: Math.max(firstA, endA), ampacityA, clearedS: burns ? Number.POSITIVE_INFINITY : clearedS }]
    })
  }
}
