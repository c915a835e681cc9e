import { sameSize } from '../thread/drill.ts'
import { drillsOf } from '../thread/drill-sets.ts'

/** Most that one drill opens an old hole, on the diameter: more, and it snatches and follows the old hole (common practice). */
const MOST_MM = 1

/** The drills that open an old hole in about equal steps: sizes of the metric set, the last one the drill itself. */
export function drillStepsMm({
  foundDiameterMm,
  drillMm
}: {
  readonly foundDiameterMm: number
  readonly drillMm: number
}): readonly number[] {
  const steps = Math.ceil((drillMm - foundDiameterMm) / MOST_MM - 1e-9)
  const between = Array.from(
    { length: Math.max(0, steps - 1) },
    (_, i) => foundDiameterMm + ((drillMm - foundDiameterMm) * (i + 1)) / steps
  )
  const sizes = between.map(wantedMm => nearestMm(wantedMm)).filter(mm => mm > foundDiameterMm && mm < drillMm && !sameSize(mm, drillMm))
  return [...new Set(sizes), drillMm]
}

function nearestMm(wantedMm: number): number {
  return drillsOf('metric').reduce((a, b) => (Math.abs(b.diameterMm - wantedMm) < Math.abs(a.diameterMm - wantedMm) ? b : a)).diameterMm
}
