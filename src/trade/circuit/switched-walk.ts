import { FactoredNetwork } from './factored-network.ts'
import { changeOf, type FaultGiven, faultsOf } from './fault.ts'
import { type WalkedFault, walkFaults, watchedBy } from './fault-walk.ts'
import { floatingParts } from './floating-parts.ts'

/** A fault in a circuit that is switched otherwise than it is drawn. */
export interface StatedFault extends WalkedFault {
  /** As `switch S2 off`; nothing as it is drawn. */
  readonly state?: string
}

export function walkedAs(state: string | undefined, given: FaultGiven): readonly StatedFault[] {
  const walked = walkFaults(given)
  return state === undefined ? walked : walked.map(one => ({ ...one, state }))
}

/**
 * What every single fault feeds with one element switched off besides. What that leaves without a path is dead, and no more
 * looked at; what burns does so with everything on.
 */
export function walkWithout(given: FaultGiven, id: string, state: string): readonly StatedFault[] {
  const alive = aliveWithout(given, id)
  const { network } = alive
  const watching = watchedBy(alive, new FactoredNetwork(network))
  return faultsOf(alive).map(fault => ({ ...NOTHING, fault, state, backwards: watching(fault).backwardsOf(changeOf(fault, network)) }))
}

/** What is left that has a path. */
function aliveWithout(given: FaultGiven, id: string): FaultGiven {
  const { network, loads, protectors, threads, points, cranking } = given
  const left = network.elements.filter(element => element.id !== id)
  const dead = new Set(floatingParts({ ...network, elements: left }).flat())
  const elements = left.filter(({ from, to }) => !dead.has(from) && !dead.has(to))
  const there = new Set(elements.map(one => one.id))
  const nodes = new Set(elements.flatMap(({ from, to }) => [from, to]))
  return {
    ...given,
    network: { ...network, elements },
    loads: loads.filter(load => there.has(load)),
    protectors: protectors.filter(one => there.has(one.id)),
    capacities: [],
    threads: threads.filter(thread => there.has(thread)),
    points: points.filter(point => nodes.has(point)),
    cranking:
      cranking !== null && nodes.has(cranking.at) ? { ...cranking, straps: cranking.straps.filter(strap => there.has(strap)) } : null
  }
}

const NOTHING = { harm: 0, currentsA: {}, opens: [], doubtful: [], overloads: [], lost: [] }
