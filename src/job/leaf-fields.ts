import type { Field, Path, ScalarField } from './field.ts'
import type { Job } from './read-job.ts'
import { JOB } from './schema/job.ts'

/** A field of one value, where it stands in a job, and what it was read as: null where it was left out. */
export interface LeafField {
  readonly path: Path
  readonly field: ScalarField
  readonly value: unknown
  /** The block it would stand in, where that was left out whole. */
  readonly missing: Path | null
}

/** Every field of one value that a job has or could have, with the names that the file gives. */
export function leafFields(job: Job): readonly LeafField[] {
  return leavesIn(JOB, job, { path: [], missing: null })
}

type Place = Pick<LeafField, 'path' | 'missing'>

function leavesIn(field: Field, value: unknown, place: Place): readonly LeafField[] {
  const below = (key: string | number): Place => ({ ...place, path: [...place.path, key] })
  if (field.is === 'map') {
    const held = (value ?? {}) as { readonly [key: string]: unknown }
    const missing = place.missing ?? (value === null ? place.path : null)
    return Object.entries(field.of).flatMap(([key, inner]) => leavesIn(inner, held[key] ?? null, { ...below(key), missing }))
  }
  if (field.is === 'list') return Array.isArray(value) ? value.flatMap((one, i) => leavesIn(field.of, one, below(i))) : []
  if (field.is === 'named') return Object.entries(value ?? {}).flatMap(([name, one]) => leavesIn(field.of, one, below(name)))
  return [{ ...place, field, value }]
}

/** The same job with another value at a path; nothing of the one that was read is changed. */
export function withValue<T>(node: T, [key, ...rest]: Path, value: unknown): T {
  if (key === undefined) return value as T
  const held = node as { readonly [key: string | number]: unknown }
  const next = withValue(held[key], rest, value)
  if (Array.isArray(node)) return node.with(Number(key), next) as T
  return Object.assign(Object.create(Object.getPrototypeOf(node)), node, { [key]: next })
}
