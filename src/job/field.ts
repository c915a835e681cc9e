import type { Given } from '../formula/given.ts'
import type { Outcome } from '../quantity/fault.ts'
import type { Kind } from '../quantity/kinds.ts'
import type { Span } from '../quantity/parse-quantity.ts'
import type { Within } from '../quantity/within.ts'

/** What is said of any field. Types, reading, JSON Schema and the page of fields are all read off these. */
export interface About {
  readonly says: string
  readonly required?: true
  /** Stands in the one line that the starter shows of a list, though it may be left out. */
  readonly typical?: true
  /** As it would be written, for the starter, the schema and messages. */
  readonly example?: string
  /** How to find it at the bench. */
  readonly measure?: string
  /** From one end to the other of what the trade meets (common practice): tried to see what a measurement would change. */
  readonly usual?: readonly [one: string, other: string]
  /** The same, where it goes with the thread of its part: so many major diameters or pitches, the weaker end first. */
  readonly usualTimes?: { readonly of: 'major' | 'pitch'; readonly times: readonly [one: number, other: number] }
}
/** Taken when the field is left out, and why it is that: allows at best a caution. */
export interface Default {
  readonly default: string
  readonly why: string
}

export type QuantityField = About & Partial<Default> & Within & { readonly is: 'quantity'; readonly kind: Kind }
export type SpanField = About & { readonly is: 'span'; readonly kind: Kind }
export type ChoiceField = About & { readonly is: 'choice'; readonly of: readonly string[]; readonly default?: string }
export type TextField = About & { readonly is: 'text' }
export type WordField = About & { readonly is: 'word'; readonly read: (text: string, at: Path) => Outcome<unknown> }
export type MapField = About & { readonly is: 'map'; readonly of: Fields; readonly optional?: true }
export type NamedField = About & { readonly is: 'named'; readonly of: Field }
export type ListField = About & { readonly is: 'list'; readonly of: Field }
export type Field = QuantityField | SpanField | ChoiceField | TextField | WordField | MapField | NamedField | ListField
/** A field of one value. */
export type ScalarField = Exclude<Field, { readonly is: 'map' | 'named' | 'list' }>
export type Fields = { readonly [key: string]: Field }

/** Where a thing stands in the file, kept with everything that has a name or can be blamed. */
export type Path = readonly (string | number)[]

/** What a list becomes that was left out: as empty as one that says there is nothing. */
export const LEFT_OUT: readonly never[] = Object.freeze([])

type Sure<F, T> = F extends { readonly required: true } | { readonly default: string } ? T : T | null
type Placed<T> = { readonly path: Path } & T

/** What a field becomes when it is read: null where it was left out. */
export type Read<F extends Field> = F extends QuantityField
  ? Sure<F, Given>
  : F extends SpanField
    ? Sure<F, Span>
    : F extends ChoiceField
      ? Sure<F, F['of'][number]>
      : F extends TextField
        ? Sure<F, string>
        : F extends WordField
          ? Sure<F, F['read'] extends (text: string, at: Path) => Outcome<infer T> ? T : never>
          : F extends MapField
            ? F extends { readonly optional: true }
              ? ReadMap<F['of']> | null
              : ReadMap<F['of']>
            : F extends NamedField
              ? { readonly [name: string]: Read<F['of']> }
              : F extends ListField
                ? readonly Read<F['of']>[]
                : never
type ReadMap<O extends Fields> = Placed<{ readonly [K in keyof O]: Read<O[K]> }>

type More = Partial<Omit<About, 'says'>>

export function quantity<const K extends Kind, const E extends More & Partial<Default> & Within = Record<never, never>>(
  kind: K,
  says: string,
  extra?: E
) {
  return { is: 'quantity', kind, says, ...(extra as NoInfer<E>) } as const
}
export function span<const K extends Kind, const E extends More = Record<never, never>>(kind: K, says: string, extra?: E) {
  return { is: 'span', kind, says, ...(extra as NoInfer<E>) } as const
}
export function choice<const O extends readonly string[], const E extends More & { readonly default?: O[number] } = Record<never, never>>(
  of: O,
  says: string,
  extra?: E
) {
  return { is: 'choice', of, says, ...(extra as NoInfer<E>) } as const
}
export function text<const E extends More = Record<never, never>>(says: string, extra?: E) {
  return { is: 'text', says, ...(extra as NoInfer<E>) } as const
}
/** A word that a trade room reads: a thread, a drill, a wire. */
export function word<T, const E extends More = Record<never, never>>(
  read: (text: string, at: Path) => Outcome<T>,
  says: string,
  extra?: E
) {
  return { is: 'word', read, says, ...(extra as NoInfer<E>) } as const
}
export function map<const O extends Fields, const E extends More & { readonly optional?: true } = Record<never, never>>(
  says: string,
  of: O,
  extra?: E
) {
  return { is: 'map', of, says, ...(extra as NoInfer<E>) } as const
}
/** Things that the file names itself: parts, holes. */
export function named<const F extends Field, const E extends More = Record<never, never>>(says: string, of: F, extra?: E) {
  return { is: 'named', of, says, ...(extra as NoInfer<E>) } as const
}
export function list<const F extends Field, const E extends More = Record<never, never>>(says: string, of: F, extra?: E) {
  return { is: 'list', of, says, ...(extra as NoInfer<E>) } as const
}
