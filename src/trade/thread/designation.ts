import { bad, type Outcome } from '../../quantity/fault.ts'
import { quoted } from '../../quantity/quoted.ts'
import { METRIC_FORM } from './designation-forms.ts'
import { readMetric } from './metric-designation.ts'
import type { Thread } from './thread.ts'
import { readUnified } from './unified-designation.ts'

/** Reads the name of a thread, as it stands on a drawing. */
export function readThread(text: string): Outcome<Thread> {
  if (/^\s*m/i.test(text)) return readMetric(text)
  const unified = readUnified(text)
  if (unified.ok) return unified
  const meant = readMetric(`M${text}`)
  return meant.ok ? bad(`${quoted(text)} is no thread`, METRIC_FORM, meant.value.name) : unified
}
