import type { Drill } from '../thread/drill.ts'
import { drillsOf } from '../thread/drill-sets.ts'
import type { Thread } from '../thread/thread.ts'

export interface StepDrill {
  readonly drill: Drill
  /** What it takes, on the diameter. */
  readonly opensMm: number
}

/** More than this on the diameter in one go, and a drill feeds itself, follows the old hole and cuts oversize (common practice). */
const MOST_AT_ONCE_MM = 1
/** 9 to 10 mm is one millimetre, whatever the last bit says. */
const ROUNDING = 1e-9

/** The drills between an old hole and the last drill, in equal steps; none where one drill does it. All go to the same stop: within the last one's point. */
export function stepDrills({ foundDiameterMm, drillMm, system }: Jump): readonly StepDrill[] {
  const openingMm = drillMm - foundDiameterMm
  const stepCount = Math.ceil(openingMm / MOST_AT_ONCE_MM - ROUNDING)
  const stock = drillsOf(STEP_SET[system])
  const wanted = Array.from({ length: stepCount - 1 }, (_, i) => foundDiameterMm + ((i + 1) * openingMm) / stepCount)
  return taken([...new Set(wanted.map(mm => nearest(stock, mm)))], foundDiameterMm)
}

interface Jump {
  readonly foundDiameterMm: number
  readonly drillMm: number
  readonly system: Thread['system']
}

/** The bench of a metric thread has metric drills. */
export const STEP_SET = { metric: 'metric', unified: 'fraction' } as const

function nearest(stock: readonly Drill[], mm: number): Drill {
  const off = (drill: Drill) => Math.abs(drill.diameterMm - mm)
  return stock.reduce((a, b) => (off(b) < off(a) ? b : a))
}

function taken(drills: readonly Drill[], foundDiameterMm: number): readonly StepDrill[] {
  return drills.map((drill, i) => ({ drill, opensMm: drill.diameterMm - (drills[i - 1]?.diameterMm ?? foundDiameterMm) }))
}
