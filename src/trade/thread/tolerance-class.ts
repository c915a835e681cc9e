import type { Outcome } from '../../quantity/fault.ts'
import { type MetricClass, readMetricClass } from './metric-class.ts'
import type { Thread } from './thread.ts'

export type ToleranceClass = MetricClass

/** Reads a tolerance class for one thread. What is not given, here or in the designation, takes the default and says so in `assumed`. */
export function readClass(text: string | null, thread: Thread): Outcome<ToleranceClass> {
  return readMetricClass(text ?? thread.classText, thread)
}
