import type { Field, Fields, ListField, MapField } from './field.ts'
import { JOB } from './schema/job.ts'

const STARTER_KINDS = ['heater', 'sensor', 'plug'] as const
export type StarterKind = (typeof STARTER_KINDS)[number]

/** What a plain part or an unwired one has no use for. */
const LEFT_OUT: { readonly [K in StarterKind]: readonly string[] } = {
  heater: [],
  sensor: ['rated', 'least-power', 'circuit', 'proof', 'readings', 'warm'],
  plug: ['rated', 'least-power', 'circuit', 'proof', 'readings', 'warm']
}
/** The names a starter gives to what the file names itself. */
const NAMES: { readonly [key: string]: string } = { output: 'idle', labels: 'S4' }
const HOLES = ['left', 'right'] as const

/** So many parts a starter has: what one hole more needs is seen at the second. */
export const MOST_PARTS = HOLES.length

/** A commented job to begin with, a hole for each part: every field with what it is. Required ones carry an example to be replaced, the others are set as remarks. */
export function starterText(all: readonly StarterKind[]): string {
  const head = [
    '# A job to begin with. Replace every value; take the # off a field you know.',
    '# Lengths, torques and the rest may carry bounds: 13.4 mm ± 0.15 mm, 45 W +5 % -10 %, 16.0..16.6 mm'
  ]
  return `${[...head, ...fieldsText(JOB.of, { all, kinds: all, indent: '', off: false })].join('\n')}\n`
}

interface Where {
  /** What the whole job fits, and what this block is about. */
  readonly all: readonly StarterKind[]
  readonly kinds: readonly StarterKind[]
  readonly indent: string
  /** Whether the block stands as a remark. */
  readonly off: boolean
}

function fieldsText(fields: Fields, where: Where): string[] {
  return Object.entries(fields)
    .filter(([key]) => !where.kinds.every(kind => LEFT_OUT[kind].includes(key)))
    .flatMap(([key, field]) => fieldText(key, field, where))
}

function fieldText(key: string, field: Field, where: Where): string[] {
  if (field.is === 'map') return mapText(key, field, where)
  if (field.is === 'named')
    return [line(where, `${key}:`, field.says), ...namedIn(key, where).flatMap(one => nestedText(one.name, field.of, deeper(one)))]
  if (field.is === 'list') return listText(key, field, { ...where, off: true })
  return [line({ ...where, off: where.off || field.required !== true }, `${key}: ${exampleOf(key, field, where)}`, field.says)]
}

/** What the file names itself: a part for each kind, a hole for each part that is fitted. */
function namedIn(key: string, where: Where): readonly (Where & { readonly name: string })[] {
  const { all } = where
  if (key === 'parts') return [...new Set(all)].map(kind => ({ ...where, kinds: [kind], name: partName(kind, all) }))
  if (key === 'holes') return all.map((kind, i) => ({ ...where, kinds: [kind], name: HOLES[i]! }))
  return [{ ...where, name: NAMES[key] ?? 'name' }]
}

function partName(kind: StarterKind, all: readonly StarterKind[]): string {
  return new Set(all).size === 1 ? 'part' : kind
}

function nestedText(name: string, field: Field, where: Where): string[] {
  return field.is === 'map' ? mapText(name, field, where) : fieldText(name, field, where)
}

/** A block is there when something in it must be, or when it is whole. */
function mapText(key: string, field: MapField, where: Where): string[] {
  const off = where.off || field.optional === true || !Object.values(field.of).some(needed)
  return [line({ ...where, off }, `${key}:`, field.says), ...fieldsText(field.of, { ...deeper(where), off })]
}

function needed(field: Field): boolean {
  return field.required === true || (field.is === 'map' && field.optional !== true && Object.values(field.of).some(needed))
}

/** In one line where that shows all there is to it, else its one item field by field. */
function listText(key: string, { of, says }: ListField, where: Where): string[] {
  if (of.is !== 'map' || Object.values(of.of).every(inFlow)) return [line(where, `${key}: [${flowText(of)}]`, says)]
  return [line(where, `${key}:`, says), ...itemText(of, deeper(where))]
}

/** What stands in every item comes first: the dash is on its first line, which nobody leaves out. */
function itemText({ of }: MapField, where: Where): string[] {
  const fields = Object.entries(of).toSorted(([, a], [, b]) => Number(inFlow(b)) - Number(inFlow(a)))
  const [first, ...rest] = fields.flatMap(([key, field]) => fieldText(key, field, deeper(where)))
  return [first!.replace(/^( *) {2}# /, '$1# - '), ...rest]
}

function inFlow({ required, typical }: Field): boolean {
  return required === true || typical === true
}

function flowText(field: Field): string {
  if (field.is !== 'map' || field.example !== undefined) return String(field.example)
  const pairs = Object.entries(field.of)
    .filter(([, inner]) => inFlow(inner))
    .map(([key, inner]) => `${key}: ${inner.is === 'map' ? flowText(inner) : inner.example}`)
  return `{ ${pairs.join(', ')} }`
}

function exampleOf(key: string, field: Field, { all, kinds: [kind] }: Where): string {
  if (field.is === 'choice' && field.of.includes(kind!)) return kind!
  if (key === 'takes') return partName(kind!, all)
  return field.example ?? (('default' in field ? field.default : undefined) || '…')
}

function deeper(where: Where): Where {
  return { ...where, indent: `${where.indent}  ` }
}

function line({ indent, off }: Where, text: string, says: string): string {
  return `${(off ? `${indent}# ${text}` : indent + text).padEnd(46)} # ${says}`
}
