import { remembering } from '../../formula/memory.ts'
import type { ReadJob } from '../../job/read-job.ts'
import type { Result } from '../../report/answer.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import type { Wanted } from '../job/judge-job.ts'
import { judgedWith, type VariedField } from './varied-field.ts'

export interface SweepPoint {
  readonly value: number
  readonly job: JobAnswer
}

/** From one end to the other in even steps, both ends judged. */
export function sweep(
  read: ReadJob,
  field: VariedField,
  { from, to, steps, wanted }: { readonly from: number; readonly to: number; readonly steps: number; readonly wanted: Wanted }
): readonly SweepPoint[] {
  return remembering(() => evenly(from, to, steps).map(value => ({ value, job: judgedWith(read, field, value, wanted) })))
}

/** Halfway points without the noise of adding up. */
export function evenly(from: number, to: number, steps: number): readonly number[] {
  return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? to : Number((from + ((to - from) * i) / steps).toPrecision(12))))
}

/** One result over the whole sweep: null where there is none. */
export interface SweptResult {
  readonly id: string
  readonly like: Result
  readonly at: readonly (Result | null)[]
}

/** Results that the field moves, in the order the jobs give them. */
export function movedResults(points: readonly SweepPoint[]): readonly SweptResult[] {
  return resultsOf(points).filter(({ at }) => new Set(at.map(markOf)).size > 1)
}

export function resultsOf(points: readonly SweepPoint[]): readonly SweptResult[] {
  const byId = points.map(({ job }) => new Map(job.results.map(result => [result.id, result])))
  const ids = [...new Set(byId.flatMap(results => [...results.keys()]))]
  return ids.map(id => {
    const at = byId.map(results => results.get(id) ?? null)
    return { id, like: at.find(result => result !== null)!, at }
  })
}

/** A move in the twelfth digit is rounding. */
function markOf(result: Result | null): string {
  if (result === null) return 'none'
  return [result.value, result.low, result.high].map(one => (typeof one === 'number' ? one.toPrecision(11) : String(one))).join(' ')
}
