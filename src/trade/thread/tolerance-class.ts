import type { Outcome } from '../../quantity/fault.ts'
import { type MetricClass, readMetricClass } from './metric-class.ts'
import type { Thread } from './thread.ts'
import { readUnifiedClass, type UnifiedClass } from './unified-class.ts'

export type ToleranceClass = MetricClass | UnifiedClass

/** Reads a tolerance class for one thread. What is not given, here or in the designation, takes the default and says so in `assumed`. */
export function readClass(text: string | null, thread: Thread): Outcome<ToleranceClass> {
  const given = text ?? thread.classText
  return thread.system === 'metric' ? readMetricClass(given, thread) : readUnifiedClass(given)
}

/** The class that stands in the designation, else the usual one. Every thread has one: whatever finds none is our own mistake. */
export function classOf(thread: Thread): ToleranceClass {
  const read = readClass(null, thread)
  if (!read.ok) throw new Error(`no class for ${thread.name}`)
  return read.value
}
