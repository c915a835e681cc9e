import { Given } from '../../formula/given.ts'
import type { Field, Path, ScalarField } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import { JOB } from '../../job/schema/job.ts'
import { inUnit } from '../../quantity/in-unit.ts'
import { KINDS, type Kind } from '../../quantity/kinds.ts'
import { showNumber } from '../../quantity/show.ts'
import type { UnitName } from '../../quantity/units.ts'
import { ofGiven, withBand } from '../plan/figure.ts'

/** One field of the job: what the form says of it, and what stands in it. */
export interface JobField {
  readonly path: Path
  /** What it belongs to within its thing, as a fitter calls it: `ring terminal`, `bus to panel`, `found`. */
  readonly of: readonly string[]
  readonly field: ScalarField
  readonly value: unknown
}

/** Every field that has a place in this job, in the order of the form; in a block that was left out there are none. */
export function fieldsOf(job: Job): readonly JobField[] {
  return walk(JOB, job, { path: [], of: [] })
}

type Place = Pick<JobField, 'path' | 'of'>

function walk(field: Field, value: unknown, { path, of }: Place): readonly JobField[] {
  if (field.is === 'map') {
    const block = value as { readonly [key: string]: unknown } | null
    return block === null
      ? []
      : Object.entries(field.of).flatMap(([key, inner]) => walk(inner, block[key], within(inner, key, { path, of })))
  }
  if (field.is === 'named')
    return Object.entries(value as object).flatMap(([name, inner]) => walk(field.of, inner, { path: [...path, name], of: [] }))
  if (field.is === 'list')
    return (value as readonly unknown[]).flatMap((inner, i) => walk(field.of, inner, { path: [...path, i], of: [...of, nameOf(inner, i)] }))
  return [{ path, of, field, value }]
}

/** A block within a thing has a name of its own; a list is named by what stands in it. */
function within(inner: Field, key: string, { path, of }: Place): Place {
  return { path: [...path, key], of: inner.is === 'map' && path.length > 0 ? [...of, key] : of }
}

/** What a thing of a list is called; a place in a list counts from one. */
function nameOf(thing: unknown, i: number): string {
  const { what, name, from, to } = thing as { readonly [key: string]: unknown }
  if (typeof what === 'string') return what
  if (typeof name === 'string') return name
  return typeof from === 'string' && typeof to === 'string' ? `${from} to ${to}` : String(i + 1)
}

/** What stands in a field, as the trade writes it; empty where nothing does. */
export function valueText({ field, value }: JobField): string {
  if (value === null || value === undefined) return ''
  if (field.is === 'quantity') return givenText(field.kind, value as Given)
  if (typeof value === 'string') return value
  return typeof value === 'object' && 'name' in value ? String(value.name) : ''
}

function givenText(kind: Kind, given: Given): string {
  return smallText(kind, given) ?? withBand(ofGiven(`field${KINDS[kind].suffix}` as UnitName, '', given))
}

/** A small mass or resistance as a shop writes it. */
function smallText(kind: Kind, { value, low, high }: Given): string | null {
  const [below, shown, unit] =
    kind === 'mass'
      ? [1, (kg: number) => showNumber(inUnit('mass', 'g', kg), 'plain'), 'g']
      : [kind === 'resistance' ? 0.1 : 0, (ohm: number) => showNumber(inUnit('resistance', 'mohm', ohm), 'plain'), 'mohm']
  if (low <= 0 || high >= below) return null
  return low === high ? `${shown(value)} ${unit}` : `${shown(value)} ${unit} (${shown(low)} to ${shown(high)} ${unit})`
}

/** Why nobody gave it, where nobody did. */
export function assumedWhy({ value }: JobField): string | undefined {
  return value instanceof Given ? value.assumed?.replace(/^default: /, '') : undefined
}

/** `holes.left` of `holes.left.found.depth`. */
export function thingOf({ path }: JobField): string {
  return path.slice(0, path[0] === 'parts' || path[0] === 'holes' ? 2 : 1).join('.')
}

/** `ring terminal: thickness` */
export function calledAs({ of, field }: JobField): string {
  return [...of, field.says].join(': ')
}
