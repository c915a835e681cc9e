import { readThread } from '../../../src/trade/thread/designation.ts'
import type { MetricThread, Thread } from '../../../src/trade/thread/thread.ts'
import { threadResults } from '../../../src/trade/thread/thread-results.ts'
import { readClass } from '../../../src/trade/thread/tolerance-class.ts'

/** A thread that the test knows to exist. */
export function knownThread(name: string): Thread {
  const thread = readThread(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  return thread.value
}

export function knownMetric(name: string): MetricThread {
  const thread = knownThread(name)
  if (thread.system !== 'metric') throw new Error(`${name} is no metric thread`)
  return thread
}

export function resultsOf(name: string, classText: string | null = null) {
  const thread = knownThread(name)
  const toleranceClass = readClass(classText, thread)
  if (!toleranceClass.ok) throw new Error(toleranceClass.fault.found)
  return threadResults({ thread, toleranceClass: toleranceClass.value })
}
