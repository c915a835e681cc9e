import { bridgedLoads } from './bridged-loads.ts'
import { directNodes } from './direct-nodes.ts'
import { elementOf, type FaultGiven } from './fault.ts'
import type { Through } from './fault-currents.ts'
import type { FedBackwards } from './fault-effects.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import type { Change } from './network-changes.ts'

export type At = (element: PlainElement) => Through
type Fed = Omit<FedBackwards, 'clearedS'>

/** A load with less than this share of the greatest voltage over any, or of its own where it is fed, is off: what is left is the shift of its ground. */
export const OFF_RATIO = 0.05
/** Of the greatest source: what stands over a load is no more than rounding. */
const ROUNDING = 1e-9

/** The loads of one network under watch: what is fed otherwise than before. */
export class BackwardsWatch {
  private readonly network: PlainNetwork
  private readonly loads: readonly PlainElement[]
  private readonly before: At
  private readonly direct: ReadonlySet<string>
  /** Loads but those that wires lead round: a bridge is no switch that is off, and in series with the bridge off is how they are meant. */
  private readonly unbridged: ReadonlySet<string>
  private readonly fedV: NonNullable<FaultGiven['fedV']>
  /** Of any load. */
  private readonly offV: number

  constructor(network: PlainNetwork, { loads, fedV = {} }: Pick<FaultGiven, 'loads' | 'fedV'>, before: At) {
    this.network = network
    this.loads = loads.map(id => elementOf(network.elements, id))
    this.before = before
    this.fedV = fedV
    const bridged = bridgedLoads(network, new Set(loads))
    this.unbridged = new Set(loads.filter(id => !bridged.has(id)))
    this.direct = directNodes(network, this.unbridged)
    this.offV = Math.max(
      ROUNDING * Math.max(0, ...network.elements.map(element => (element.kind === 'source' ? Math.abs(element.sourceV) : 0))),
      OFF_RATIO * Math.max(0, ...this.loads.map(load => Math.abs(before(load).dropV)))
    )
  }

  /** Loads whose current turned round, that were off and are not, and that had it straight from the source and now have it through another load. */
  after(change: Change, at: At): readonly Fed[] {
    // What joins two nodes takes no straight way from any load.
    const direct = change.kind === 'joined' ? this.direct : directNodes(this.network, this.unbridged, change.element)
    // What stands over a load that is itself open is the voltage over the break.
    const whole = this.loads.filter(({ id }) => change.kind === 'joined' || id !== change.element.id)
    return whole.flatMap(load => this.fed(load, at(load), direct) ?? [])
  }

  private fed(load: PlainElement, { currentA, dropV }: Through, direct: ReadonlySet<string>): Fed | null {
    const { id } = load
    const before = this.before(load)
    const offV = Math.max(this.offV, OFF_RATIO * (this.fedV[id] ?? 0))
    if (Math.abs(dropV) <= offV) return null
    if (Math.abs(before.dropV) <= offV)
      return this.unbridged.has(id) ? { id, how: dropV < 0 ? 'reversed' : 'though switched off', dropV } : null
    if (currentA / before.currentA < 0) return { id, how: 'reversed', dropV }
    return isBetween(load, this.direct) && !isBetween(load, direct) ? { id, how: 'through another load', dropV } : null
  }
}

function isBetween({ from, to }: PlainElement, nodes: ReadonlySet<string>): boolean {
  return nodes.has(from) && nodes.has(to)
}
