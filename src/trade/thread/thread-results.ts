import { type MetricResults, metricThread } from './metric-thread.ts'
import type { Thread } from './thread.ts'
import type { ToleranceClass } from './tolerance-class.ts'

export type ThreadResults = MetricResults

/** Everything known of a thread, its limits in one class. The class is one that was read for this thread. */
export function threadResults(x: { readonly thread: Thread; readonly toleranceClass: ToleranceClass }): ThreadResults {
  return metricThread(x.thread, x.toleranceClass)
}
