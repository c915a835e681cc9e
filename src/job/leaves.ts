import type { Field, Path, ScalarField } from './field.ts'

/** One step down the form: from what kind of field, by which key, and what stands there. */
export interface Descent {
  readonly from: 'map' | 'named' | 'list'
  readonly to: Field
  readonly key: string | number
  readonly value: unknown
}

/** A field of one value in its place, and what stands in it: nothing where it was left out. */
export interface Leaf {
  readonly path: Path
  readonly field: ScalarField
  readonly value: unknown
  /** The way to it, from the top. */
  readonly way: readonly Descent[]
}

/** Every field of one value that has a place, in the order of the form; in a block that was left out there are none. */
export function leavesOf(field: Field, value: unknown, way: readonly Descent[] = []): readonly Leaf[] {
  if (field.is !== 'map' && field.is !== 'named' && field.is !== 'list')
    return [{ path: way.map(({ key }) => key), field, value: value ?? null, way }]
  if (value === null || value === undefined) return []
  const down = (key: string | number, to: Field, held: unknown) => leavesOf(to, held, [...way, { from: field.is, to, key, value: held }])
  if (field.is === 'list') return (value as readonly unknown[]).flatMap((one, i) => down(i, field.of, one))
  const held = value as { readonly [key: string]: unknown }
  if (field.is === 'named') return Object.entries(held).flatMap(([name, one]) => down(name, field.of, one))
  return Object.entries(field.of).flatMap(([key, inner]) => down(key, inner, held[key]))
}
