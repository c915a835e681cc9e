import type { Drill } from '../thread/drill.ts'
import { drillsOf } from '../thread/drill-sets.ts'
import type { Thread } from '../thread/thread.ts'
import { minorLimits } from '../thread/thread-results.ts'
import { STEP_SET } from './step-drills.ts'

/** The smallest drill of the bench that opens an old hole all round and leaves it inside the limits of its thread; null where none does. */
export function truingDrill(thread: Thread, foundMm: { readonly high: number }): Drill | null {
  const { minMm, maxMm } = minorLimits(thread)
  const inside = drillsOf(STEP_SET[thread.system]).filter(({ diameterMm: mm }) => mm > foundMm.high && mm >= minMm && mm <= maxMm)
  return inside.length === 0 ? null : inside.reduce((a, b) => (b.diameterMm < a.diameterMm ? b : a))
}
