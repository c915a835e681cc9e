import type { FaultGiven } from './fault.ts'
import { type WalkedFault, walkFaults } from './fault-walk.ts'
import { floatingParts } from './floating-parts.ts'
import type { PlainElement } from './network.ts'

/** A fault in a circuit that is switched otherwise than it is drawn. */
export interface StatedFault extends WalkedFault {
  /** As `switch S2 off`; nothing as it is drawn. */
  readonly state?: string
}

export function walkedAs(state: string, given: FaultGiven): readonly StatedFault[] {
  return walkFaults(given).map(one => ({ ...one, state }))
}

/** Every single fault with one element switched off besides. What that leaves without a path is dead, and no more looked at. */
export function walkWithout(given: FaultGiven, id: string, state: string): readonly StatedFault[] {
  const { network, loads, protectors, capacities, threads, points } = given
  const left = network.elements.filter(element => element.id !== id)
  const dead = new Set(floatingParts({ ...network, elements: left }).flat())
  const elements = left.filter(({ from, to }) => !dead.has(from) && !dead.has(to))
  const there = new Set(elements.map(one => one.id))
  const nodes = new Set(elements.flatMap(nodesOf))
  return walkedAs(state, {
    network: { ...network, elements },
    loads: loads.filter(load => there.has(load)),
    protectors: protectors.filter(one => there.has(one.id)),
    capacities: capacities.filter(one => there.has(one.id)),
    threads: threads.filter(thread => there.has(thread)),
    points: points.filter(point => nodes.has(point)),
    cranking: null
  })
}

function nodesOf({ from, to }: PlainElement): readonly string[] {
  return [from, to]
}
