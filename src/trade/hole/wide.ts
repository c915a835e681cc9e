/** A hole that the wider of drill and old hole makes wider than its thread allows. */
export interface Wide {
  readonly widestMm: number
  readonly minorMaxMm: number
  /** Whether it is so at its narrowest too. */
  readonly sure: boolean
}

interface Opened {
  readonly foundDiameterMm: Ends
  readonly drillMm: Ends
  readonly minorMaxMm: number
}

interface Ends {
  readonly low: number
  readonly high: number
}

/** Null where the thread is as full as its limits allow. */
export function wideOf({ foundDiameterMm, drillMm, minorMaxMm }: Opened): Wide | null {
  const widestMm = Math.max(foundDiameterMm.high, drillMm.high)
  if (widestMm <= minorMaxMm) return null
  return { widestMm, minorMaxMm, sure: Math.max(foundDiameterMm.low, drillMm.low) > minorMaxMm }
}
