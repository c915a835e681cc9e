import type { Plain } from '../../formula/given.ts'
import type { Tested } from './probe.ts'

/** Kinds of fault, each in one place of the circuit or of the meter. */
export type FaultKind =
  | 'high-resistance'
  | 'open'
  | 'bad-ground'
  | 'short'
  | 'short-to-ground'
  | 'wrong-part'
  | 'wrong-wire'
  | 'source-dead'
  | 'source-low'
  | 'source-high'
  | 'source-other'
  | 'source-turned'
  | 'misread'
  | 'leads'

/** How large a fault may be: anything between two ends, evenly over its logarithm; one of several; or it has no size. */
export type FaultSizes =
  | { readonly by: 'range'; readonly low: number; readonly high: number }
  | { readonly by: 'list'; readonly of: readonly { readonly size: number; readonly name: string }[] }
  | { readonly by: 'none' }

/** A fuse or a breaker, by the run it is in, and what it carries in a circuit in order. */
export interface Protector {
  readonly id: string
  readonly currentA: number
}

export interface Fault {
  /** `high-resistance@panel to switched`. */
  readonly id: string
  readonly kind: FaultKind | 'healthy'
  /** The place, as it is written at a test point. */
  readonly at: string
  readonly says: string
  readonly sizes: FaultSizes
  /** What the size is, and its unit. */
  readonly sizeSays: string
  readonly unit: string
  /** The circuit with the fault in it. */
  readonly changes: (tested: Plain<Tested>, size: number) => Plain<Tested>
  /** What opens where the fault draws too much. */
  readonly behind?: readonly Protector[]
  /** The reading that is misread: of nought, so many times as much is nought. */
  readonly reading?: number
  /** What the meter then shows in place of what it should: so many times as much, reading by reading. */
  readonly shows?: (values: readonly number[], size: number) => readonly number[]
}

/** Ohms of what is broken through: more than any meter of the bench tells from nothing. */
export const OPEN_OHM = 2e8

/** A fault of the meter leaves the circuit as it is. */
export const unchanged: Fault['changes'] = tested => tested

export const HEALTHY: Fault = {
  id: 'healthy',
  kind: 'healthy',
  at: '',
  says: 'everything as it was drawn',
  sizes: { by: 'none' },
  sizeSays: '',
  unit: '',
  changes: unchanged
}

type PlainElement = Plain<Tested>['network']['elements'][number]

export function withElement(tested: Plain<Tested>, id: string, change: (element: PlainElement) => PlainElement): Plain<Tested> {
  const elements = tested.network.elements.map(element => (element.id === id ? change(element) : element))
  return { ...tested, network: { ...tested.network, elements } }
}

/** One resistance more, between two points. */
export function withMore(
  tested: Plain<Tested>,
  ends: { readonly from: string; readonly to: string },
  resistanceOhm: number
): Plain<Tested> {
  const element = { kind: 'resistor', id: `fault ${ends.from} to ${ends.to}`, ...ends, resistanceOhm } as const
  return { ...tested, network: { ...tested.network, elements: [...tested.network.elements, element] } }
}

/** Changes the resistance of one element. */
export function resisting(id: string, change: (ohm: number, size: number) => number): Fault['changes'] {
  return (tested, size) =>
    withElement(tested, id, element =>
      element.kind === 'resistor' ? { ...element, resistanceOhm: change(element.resistanceOhm, size) } : element
    )
}

/** Two faults at once: the first at the size it has. */
export function withFirst(first: Fault, firstSize: number, second: Fault): Fault {
  const shown = [first.shows, second.shows]
  const behind = first.behind ?? second.behind
  return {
    ...second,
    ...(behind === undefined ? {} : { behind }),
    changes:
      first.changes === unchanged && second.changes === unchanged
        ? unchanged
        : (tested, size) => second.changes(first.changes(tested, firstSize), size),
    ...(shown.every(one => one === undefined)
      ? {}
      : {
          shows: (values, size) => {
            const once = first.shows?.(values, firstSize) ?? values
            return second.shows?.(once, size) ?? once
          }
        })
  }
}
