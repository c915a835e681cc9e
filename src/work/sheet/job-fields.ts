import { Given } from '../../formula/given.ts'
import type { Field, Path, ScalarField } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import { JOB } from '../../job/schema/job.ts'
import { KINDS } from '../../quantity/kinds.ts'
import type { UnitName } from '../../quantity/units.ts'
import { ofGiven, withBand } from '../plan/figure.ts'

/** One field of the job: what the form says of it, and what stands in it. */
export interface JobField {
  readonly path: Path
  readonly field: ScalarField
  readonly value: unknown
}

/** Every field that has a place in this job, in the order of the form; in a block that was left out there are none. */
export function fieldsOf(job: Job): readonly JobField[] {
  return walk(JOB, job, [])
}

function walk(field: Field, value: unknown, path: Path): readonly JobField[] {
  if (field.is === 'map') {
    const block = value as { readonly [key: string]: unknown } | null
    return block === null ? [] : Object.entries(field.of).flatMap(([key, inner]) => walk(inner, block[key], [...path, key]))
  }
  if (field.is === 'named') return Object.entries(value as object).flatMap(([name, inner]) => walk(field.of, inner, [...path, name]))
  if (field.is === 'list') return (value as readonly unknown[]).flatMap((inner, i) => walk(field.of, inner, [...path, i]))
  return [{ path, field, value }]
}

/** What stands in a field, as the trade writes it; empty where nothing does. */
export function valueText({ field, value }: JobField): string {
  if (value === null || value === undefined) return ''
  if (field.is === 'quantity') return givenText(field.kind, value as Given)
  if (typeof value === 'string') return value
  return typeof value === 'object' && 'name' in value ? String(value.name) : ''
}

function givenText(kind: keyof typeof KINDS, given: Given): string {
  return withBand(ofGiven(`field${KINDS[kind].suffix}` as UnitName, '', given))
}

/** Why nobody gave it, where nobody did. */
export function assumedWhy({ value }: JobField): string | undefined {
  return value instanceof Given ? value.assumed?.replace(/^default: /, '') : undefined
}

/** `holes.left` of `holes.left.found.depth`: the thing, and the rest of the way to the field. */
export function thingOf(path: Path): { readonly thing: string; readonly rest: string } {
  const named = path[0] === 'parts' || path[0] === 'holes' ? 2 : 1
  return { thing: path.slice(0, named).join('.'), rest: path.slice(named).map(written).join(' ') }
}

/** A place in a list counts from one. */
function written(key: string | number): string {
  return typeof key === 'number' ? String(key + 1) : key
}
