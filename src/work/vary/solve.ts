import { remembering } from '../../formula/memory.ts'
import type { ReadJob } from '../../job/read-job.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import type { Wanted } from '../job/judge-job.ts'
import { evenly } from './sweep.ts'
import { judgedWith, type VariedField } from './varied-field.ts'

export interface Question {
  readonly from: number
  readonly to: number
  readonly want: 'least' | 'greatest'
  /** Places that are looked at before the edge between two of them is closed in on. */
  readonly steps: number
  readonly fits: (job: JobAnswer) => boolean
  readonly wanted: Wanted
}

export interface Solved {
  /** The value asked for; null where nothing that was looked at fits. */
  readonly value: number | null
  /** The job there, or where nothing fits at the end that was asked for. */
  readonly job: JobAnswer
  /** The job just beyond, where it fits no more; null where the end of the range fits. */
  readonly beyond: JobAnswer | null
}

const HALVINGS = 50
/** What fits no more is told at this share of a step beyond: at the edge itself it fails by rounding alone. */
const SEEN = 100

/** Looks from the end that is asked for to the first place that fits, then halves the step before it. */
export function solve(read: ReadJob, field: VariedField, question: Question): Solved {
  return remembering(() => solved(read, field, question))
}

function solved(read: ReadJob, field: VariedField, { from, to, want, steps, fits, wanted }: Question): Solved {
  const judged = (value: number) => judgedWith(read, field, value, wanted)
  const inward = want === 'greatest' ? [...evenly(from, to, steps)].reverse() : evenly(from, to, steps)
  const first = judged(inward[0]!)
  if (fits(first)) return { value: inward[0]!, job: first, beyond: null }
  let beyond = first
  for (const [i, value] of inward.entries()) {
    const job = i === 0 ? first : judged(value)
    if (fits(job)) return closedIn({ value, job }, { value: inward[i - 1]!, job: beyond }, { judged, fits })
    beyond = job
  }
  return { value: null, job: first, beyond: null }
}

interface Place {
  readonly value: number
  readonly job: JobAnswer
}

function closedIn(
  inside: Place,
  outside: Place,
  { judged, fits }: { readonly judged: (value: number) => JobAnswer } & Pick<Question, 'fits'>
): Solved {
  let [good, bad] = [inside, outside]
  for (let i = 0; i < HALVINGS; i++) {
    const value = (good.value + bad.value) / 2
    if (value === good.value || value === bad.value || Math.abs(bad.value - good.value) <= 1e-10 * Math.abs(value)) break
    const job = judged(value)
    if (fits(job)) good = { value, job }
    else bad = { value, job }
  }
  const seen = judged(good.value + (outside.value - inside.value) / SEEN)
  return { value: good.value, job: good.job, beyond: fits(seen) ? bad.job : seen }
}
