import { Given } from '../formula/given.ts'
import { KINDS } from '../quantity/kinds.ts'
import type { Field } from './field.ts'
import type { Job } from './read-job.ts'
import { JOB } from './schema/job.ts'
import { takenOf } from './taken.ts'

/** One number of a job as it was read, or as it was taken where it was left out. */
export interface JobInput {
  readonly value: number
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
  readonly assumed: string | null
}

/** Every quantity of a job by its path. */
export function inputsOf(job: Job): { readonly [path: string]: JobInput } {
  const inputs: Inputs = {}
  note(inputs, JOB, job, '')
  for (const [path, given, unit] of takenOf(job)) {
    if (given === null) delete inputs[path]
    else inputs[path] = inputOf(given, inputs[path]?.unit ?? unit)
  }
  return inputs
}

type Inputs = Record<string, JobInput>

/** Notes what is a quantity at a path or below it. */
function note(inputs: Inputs, field: Field, value: unknown, path: string): void {
  if (field.is === 'quantity' && value instanceof Given) inputs[path] = inputOf(value, KINDS[field.kind].house)
  if (field.is !== 'map' && field.is !== 'named' && field.is !== 'list') return
  const held = value as { readonly [key: string]: unknown }
  for (const key of Object.keys(field.is === 'map' ? field.of : held)) {
    const inner = held[key] ?? null
    if (inner !== null) note(inputs, field.is === 'map' ? field.of[key]! : field.of, inner, path === '' ? key : `${path}.${key}`)
  }
}

/** One number with its bounds, where it has any. */
export function inputOf({ value, low, high, assumed }: Given, unit: string): JobInput {
  const loose = low < high
  return { value, low: loose ? low : null, high: loose ? high : null, unit, assumed: assumed ?? null }
}
