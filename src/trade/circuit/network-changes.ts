import type { FactoredNetwork, Unknowns } from './factored-network.ts'
import { LuFactors } from './lu-factors.ts'
import type { PlainElement } from './network.ts'

/** An element taken out, or two nodes joined that were not. */
export type Change =
  | { readonly kind: 'opened'; readonly element: PlainElement }
  | { readonly kind: 'joined'; readonly from: string; readonly to: string; readonly resistanceOhm: number }

/** A change as the equations see it: what one unit of it does to every unknown, and the law that settles how many units. */
interface Lever {
  readonly change: Change
  readonly response: Unknowns
  /** Its own part in its law: nought for a series voltage, 1 for a cancelled current, the resistance of a join. */
  readonly own: number
}

/** Less than this share of an element's law left over means that nothing else joins its two ends; likewise so small a conductance round it. */
const ALONE = 1e-9
const NO_WAY_ROUND = 1e-12

function hangsAlone({ change, own }: Lever, law: number): boolean {
  return change.kind === 'opened' && Math.abs(law) < (own === 1 ? ALONE : NO_WAY_ROUND)
}

/**
 * A network with a few changes, from the factors of the network as it was (Sherman, Morrison and Woodbury).
 * What one element does is worked out once, however many faults ask for it.
 */
export class NetworkChanges {
  readonly factored: FactoredNetwork
  private readonly levers = new Map<string, Lever>()

  constructor(factored: FactoredNetwork) {
    this.factored = factored
  }

  /** Every unknown after the changes; undefined where they leave a part without a path, so that it has to be worked out anew. */
  after(changes: readonly Change[]): Unknowns | undefined {
    const levers = [...new Set(changes.map(change => this.leverOf(change)))]
    const { unknowns } = this.factored
    const misses = levers.map(({ change }) => this.measure(change, unknowns, 'whole'))
    const laws = levers.map((row, i) =>
      levers.map(({ response }, j) => (i === j ? row.own : 0) - this.measure(row.change, response, 'response'))
    )
    if (levers.some((lever, i) => hangsAlone(lever, laws[i]![i]!)))
      return levers.length === 1 && Math.abs(misses[0]!) < ALONE ? unknowns : undefined
    const units = solvedFor(laws, misses)
    return units === undefined ? undefined : moved(unknowns, levers, units)
  }

  private leverOf(change: Change): Lever {
    const key = change.kind === 'opened' ? `opened ${change.element.id}` : `joined ${change.from} ${change.to} ${change.resistanceOhm}`
    const found = this.levers.get(key) ?? this.newLever(change)
    this.levers.set(key, found)
    return found
  }

  private newLever(change: Change): Lever {
    if (change.kind === 'joined') return { change, response: this.factored.response(change), own: change.resistanceOhm }
    const { from, to } = change.element
    const series = this.factored.seriesResponse(change.element)
    if (series !== undefined) return { change, response: series, own: 0 }
    return { change, response: this.factored.response({ from: to, to: from }), own: 1 }
  }

  /** What the law of a change speaks of: the current of an element to be taken out, the voltage over a join. */
  private measure(change: Change, unknowns: Unknowns, of: 'whole' | 'response'): number {
    return change.kind === 'opened' ? this.factored.currentA(unknowns, change.element, of) : this.factored.dropV(unknowns, change)
  }
}

function solvedFor(laws: readonly (readonly number[])[], misses: readonly number[]): ArrayLike<number> | undefined {
  if (laws.length === 0) return []
  if (laws.length === 1) {
    const units = misses[0]! / laws[0]![0]!
    return Number.isFinite(units) ? [units] : misses[0] === 0 ? [0] : undefined
  }
  const units = new LuFactors(Float64Array.from(laws.flat())).solve(Float64Array.from(misses))
  return units.every(Number.isFinite) ? units : undefined
}

/** Every unknown after so many units of each lever. */
function moved(unknowns: Unknowns, levers: readonly Lever[], units: ArrayLike<number>): Unknowns {
  const after = unknowns.slice()
  for (const [k, { response }] of levers.entries()) for (let n = 0; n < after.length; n++) after[n]! += units[k]! * response[n]!
  return after
}
