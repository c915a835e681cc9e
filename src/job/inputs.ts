import { Given } from '../formula/given.ts'
import { KINDS } from '../quantity/kinds.ts'
import type { Field } from './field.ts'
import type { Job } from './read-job.ts'
import { JOB } from './schema/job.ts'

/** One number of a job as it was read, defaults included. */
export interface JobInput {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
  readonly assumed: string | null
}

/** Every quantity of a job by its path. */
export function inputsOf(job: Job): { readonly [path: string]: JobInput } {
  return Object.fromEntries(inputsIn(JOB, job, ''))
}

function inputsIn(field: Field, value: unknown, path: string): readonly (readonly [string, JobInput])[] {
  if (value === null || value === undefined) return []
  if (field.is === 'quantity') return value instanceof Given ? [[path, inputOf(value, KINDS[field.kind].house)]] : []
  const inside = (key: string) => (path === '' ? key : `${path}.${key}`)
  const held = value as { readonly [key: string]: unknown }
  if (field.is === 'map') return Object.entries(field.of).flatMap(([key, inner]) => inputsIn(inner, held[key], inside(key)))
  if (field.is === 'named' || field.is === 'list') return Object.entries(held).flatMap(([key, one]) => inputsIn(field.of, one, inside(key)))
  return []
}

/** One number with its bounds, where it has any. */
export function inputOf({ value, low, high, assumed }: Given, unit: string): JobInput {
  const loose = low < high
  return { value, low: loose ? low : null, high: loose ? high : null, unit, assumed: assumed ?? null }
}
