import { bad, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { METRIC_FORM, readMetric } from './metric-designation.ts'
import type { Thread } from './thread.ts'

/** Reads the name of a thread, as it stands on a drawing. */
export function readThread(text: string): Outcome<Thread> {
  if (/^\s*m/i.test(text)) return readMetric(text)
  const meant = readMetric(`M${text}`)
  return bad(`${quoted(text)} is no thread`, METRIC_FORM, meant.ok ? meant.value.name : undefined)
}
