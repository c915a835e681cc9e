import { Given } from '../formula/given.ts'
import { KINDS } from '../quantity/kinds.ts'
import { leavesOf } from './leaves.ts'
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
  return Object.fromEntries(
    leavesOf(JOB, job).flatMap(({ path, field, value }) =>
      field.is === 'quantity' && value instanceof Given ? [[path.join('.'), inputOf(value, KINDS[field.kind].house)]] : []
    )
  )
}

/** One number with its bounds, where it has any. */
export function inputOf({ value, low, high, assumed }: Given, unit: string): JobInput {
  const loose = low < high
  return { value, low: loose ? low : null, high: loose ? high : null, unit, assumed: assumed ?? null }
}
