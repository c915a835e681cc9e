// table: tensile stress areas of ISO 898-1. Tolerance: half the last digit printed.
import { describe, expect, it } from 'vitest'
import { readThread } from '../../src/trade/thread/designation.ts'
import { threadResults } from '../../src/trade/thread/thread-results.ts'
import { readClass } from '../../src/trade/thread/tolerance-class.ts'
import { ISO_STRESS_AREAS } from './rows/iso-stress-area.ts'

function stressAreaMm2(name: string): number {
  const thread = readThread(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  const toleranceClass = readClass(null, thread.value)
  if (!toleranceClass.ok) throw new Error(toleranceClass.fault.found)
  return threadResults({ thread: thread.value, toleranceClass: toleranceClass.value }).stressAreaMm2
}

/** Half of the last digit: `84.3` is good to 0.05. */
function halfDigit(printed: string): number {
  return 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)
}

describe.each(['published', 'computed'])('%s', kind => {
  it.each(ISO_STRESS_AREAS.filter(row => row.kind === kind))('$thread has $printed mm² [$source, $label]', ({ thread, printed }) => {
    expect(Math.abs(stressAreaMm2(thread) - Number(printed))).toBeLessThanOrEqual(halfDigit(printed) + 1e-9)
  })
})
