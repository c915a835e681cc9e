import { Given } from '../../formula/given.ts'
import type { JobItem } from '../../job/circuit-names.ts'
import type { Field, Fields, Path } from '../../job/field.ts'
import type { Job } from '../../job/read-job.ts'
import { JOB } from '../../job/schema/job.ts'
import { takenOf, warmsItself } from '../../job/taken.ts'
import { KINDS } from '../../quantity/kinds.ts'
import { showNumber } from '../../quantity/show.ts'
import { breakingCapacity } from '../../trade/circuit/protection-breaking.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'

/** A field that nobody has given, with what a trial of it needs. */
export interface Candidate {
  readonly path: Path
  readonly field: Field
  /** From one end to the other of what the trade meets; null where nothing is tried. */
  readonly usual: readonly string[] | null
  /** The text it was taken as; null where nothing was taken. */
  readonly taken: string | null
  /** Fields that must stand beside it, where the block it would stand in was left out whole. */
  readonly beside: readonly { readonly path: Path; readonly text: string }[]
}

type Found = Omit<Candidate, 'usual'>
type Place = Pick<Candidate, 'path' | 'beside'>

/** Every field of a job that can be measured and is unknown or assumed, in the order of the file. The meters decide no verdict of a job. */
export function candidatesOf(job: Job): readonly Candidate[] {
  const instead = new Map(takenOf(job).map(([path, given]) => [path, given]))
  return candidatesIn(JOB, job, { path: [], beside: [] })
    .filter(({ path }) => path[0] !== 'proof' && !isOfNoUse(job, path))
    .map(one => ({ ...one, usual: usualOf(one, job), taken: takenInstead(one, instead.get(one.path.join('.'))) }))
}

function takenInstead({ taken, field }: Found, instead: Given | null | undefined): Candidate['taken'] {
  if (instead === null || instead === undefined) return taken
  if (field.is === 'choice') return spanText(instead)
  return taken === null ? taken : takenText(instead, field)
}

function usualOf({ path: [, name], field: { usual, usualTimes } }: Found, { parts }: Job): Candidate['usual'] {
  if (usualTimes === undefined) return usual ?? null
  const { majorMm, pitchMm } = parts[String(name)]!.thread
  return usualTimes.times.map(times => `${showNumber(times * (usualTimes.of === 'major' ? majorMm : pitchMm), 'length')} mm`)
}

/** What only a heater has. */
const HEATER_ALONE = ['rated', 'least-power']

function isOfNoUse({ parts, holes, circuit }: Job, [block, name, key, inner, ...deeper]: Path): boolean {
  if (block === 'parts') return HEATER_ALONE.includes(String(key)) && parts[String(name)]?.kind !== 'heater'
  // A table knows the strength of most alloys: that of another is asked for once its name is known.
  if (block === 'holes') return key === 'casting' && inner === 'shear' && holes[String(name)]?.casting.alloy === null
  const wire = block === 'circuit' && name === 'runs' ? (circuit?.runs[Number(key)]?.wire ?? null) : null
  // Worked out from what flows and how it lies.
  if (deeper[0] === 'temperature' && wire !== null && warmsItself(wire)) return true
  // The make-up of a metric wire is that of its class; what is in question is a gauge.
  if (deeper[0] === 'conductor' && wire?.size.system !== 'awg') return true
  if (deeper[1] === 'along') return !hasPlace(circuit, Number(key), Number(deeper[0]))
  if (deeper[1] === 'breaking-capacity') return !standsOnPart(circuit?.runs[Number(key)]?.through[Number(deeper[0])])
  // A joint, a fuse or a switch may be drawn without any wire.
  return block === 'circuit' && name === 'runs' && inner === 'wire' && deeper.length > 0 && wire === null
}

/** A fuse or breaker in a run with a wire sits somewhere on it. */
function hasPlace(circuit: Job['circuit'], run: number, item: number): boolean {
  const found = circuit?.runs[run]
  const { fuse = null, breaker = null } = found?.through[item] ?? {}
  return found !== undefined && found.wire !== null && (fuse ?? breaker) !== null
}

/** Of a style that nothing is published of, what a fuse or breaker can break stands on the part alone. */
function standsOnPart(item: JobItem | undefined): boolean {
  if (item === undefined || item.style === null || (item.fuse ?? item.breaker) === null) return false
  return breakingCapacity(styleOf(item.style), item.rating?.value ?? 0) === undefined
}

function candidatesIn(field: Field, value: unknown, place: Place): readonly Found[] {
  const below = (key: string | number): Place => ({ ...place, path: [...place.path, key] })
  if (field.is === 'map') {
    const held = (value ?? {}) as { readonly [key: string]: unknown }
    const whole = value === null && place.path.length === 1 ? {} : field.of
    const beside = value === null ? requiredOf(field.of, place.path) : place.beside
    return Object.entries(whole).flatMap(([key, inner]) => candidatesIn(inner, held[key] ?? null, { ...below(key), beside }))
  }
  if (field.is === 'named') return Object.entries(value ?? {}).flatMap(([name, one]) => candidatesIn(field.of, one, below(name)))
  if (field.is === 'list' && Array.isArray(value) && value.length > 0)
    return value.flatMap((one, i) => candidatesIn(field.of, one, below(i)))
  const taken = value instanceof Given && value.assumed !== undefined ? takenText(value, field) : null
  const open = taken !== null || value === null || (Array.isArray(value) && field.usual !== undefined)
  return open && (field.measure ?? field.usual) !== undefined ? [{ ...place, field, taken }] : []
}

/** What one of several words would have said, where none was told. */
function spanText({ low, high }: Given): string {
  return `${showNumber(low, 'plain')} to ${showNumber(high, 'plain')}`
}

function requiredOf(fields: Fields, path: Path): Candidate['beside'] {
  return Object.entries(fields).flatMap(([key, { required, example }]) =>
    required === true && example !== undefined ? [{ path: [...path, key], text: example }] : []
  )
}

function takenText({ value }: Given, field: Field): string {
  return field.is === 'quantity' ? `${showNumber(value, 'plain')} ${KINDS[field.kind].house}`.trim() : showNumber(value, 'plain')
}
