import type { Plain } from '../../formula/given.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import type { Change } from './network-changes.ts'
import type { Protector } from './wire.ts'

/** What each element of a network is, beside its resistance. Whatever stands in none of these is wire or joint. */
export interface FaultGiven {
  readonly network: PlainNetwork
  /** What takes current for its own sake. */
  readonly loads: readonly string[]
  /** What stands over a load where it is fed, however the circuit is switched then; not told, what stands over any as it is. */
  readonly fedV?: { readonly [load: string]: number }
  readonly protectors: readonly ({ readonly id: string } & Plain<Protector>)[]
  /** What a wire carries for good. */
  readonly capacities: readonly { readonly id: string; readonly ampacityA: number }[]
  /** Joints through the threads of a part: never counted on for the way back. */
  readonly threads: readonly string[]
  /** Points that can touch the structure. */
  readonly points: readonly string[]
  /** The starter: its current comes back into this point, and goes home by these elements. */
  readonly cranking: { readonly currentA: number; readonly at: string; readonly straps: readonly string[] } | null
}

export type Fault =
  | { readonly kind: 'opened' | 'threads' | 'cranking'; readonly id: string }
  | { readonly kind: 'shorted'; readonly point: string }

/** A dead short in practice: bare copper pressed on metal (memory). */
export const SHORT_OHM = 0.001

/** Every fault that is walked, one at a time. */
export function faultsOf({ network, points, threads, cranking }: FaultGiven): readonly Fault[] {
  const opened = network.elements.map(({ id }): Fault => ({ kind: threads.includes(id) ? 'threads' : 'opened', id }))
  const shorted = points.filter(point => point !== network.ground).map((point): Fault => ({ kind: 'shorted', point }))
  const straps = (cranking?.straps ?? []).map((id): Fault => ({ kind: 'cranking', id }))
  return [...opened, ...shorted, ...straps]
}

export function changeOf(fault: Fault, { elements, ground }: PlainNetwork): Change {
  if (fault.kind === 'shorted') return { kind: 'joined', from: fault.point, to: ground, resistanceOhm: SHORT_OHM }
  return { kind: 'opened', element: elementOf(elements, fault.id) }
}

export function elementOf(elements: readonly PlainElement[], id: string): PlainElement {
  const found = elements.find(element => element.id === id)
  if (found === undefined) throw new Error(`no element ${id} in this network`)
  return found
}
