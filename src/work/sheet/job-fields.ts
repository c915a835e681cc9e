import { Given } from '../../formula/given.ts'
import type { Path, ScalarField } from '../../job/field.ts'
import { type Descent, leavesOf } from '../../job/leaves.ts'
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

/** Every field that has a place in this job, in the order of the form. */
export function fieldsOf(job: Job): readonly JobField[] {
  return leavesOf(JOB, job).map(({ path, field, value, way }) => ({ path, field, value, of: namesOf(way) }))
}

/** A block within a thing has a name of its own; a list is named by what stands in it. */
function namesOf(way: readonly Descent[]): readonly string[] {
  const thing = way.findLastIndex(({ from }) => from === 'named')
  return way.slice(thing + 1).flatMap(({ from, to, key, value }, i) => {
    if (from === 'list') return [nameOf(value, Number(key))]
    return to.is === 'map' && thing + 1 + i > 0 ? [String(key)] : []
  })
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
