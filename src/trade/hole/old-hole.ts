import { fact } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import * as clearance from './clearance.ts'
import { type Bottom, fallMm } from './old-bottom.ts'

/** An old hole as it was felt, and the drill that is to open it. */
export interface OldHole {
  readonly foundDiameterMm: Given
  /** From the face to where a flat-ended rod stops. */
  readonly foundDepthMm: Given
  /** Diameter of that rod; nought for a point. */
  readonly rodMm: Given
  readonly bottom: Bottom
  readonly drillMm: Given
  readonly pointDeg: Given
}

export const RIM_RADIUS = fact('rimRadiusMm', { says: 'lesser radius of drill and old hole', symbol: 'r', source: SOURCES.geometry })

/**
 * Where the old bottom stands to the drill. The gap between the two, taken along the axis, is least at the axis or at the rim:
 * it is straight over a flat and over a cone, and over a fillet it bends so that an end is lowest.
 * Beyond the wall of the old hole the drill meets metal that it is there to cut.
 */
export function oldHole(found: Plain<OldHole>) {
  const { foundDiameterMm, foundDepthMm, rodMm, drillMm, pointDeg } = found
  const rodFallMm = fallMm(rodMm / 2, found)
  const oldTipMm = clearance.oldTipMm({ foundDepthMm, rodFallMm })
  const rimRadiusMm = Math.min(foundDiameterMm, drillMm) / 2
  recordStep(RIM_RADIUS, rimRadiusMm, () => `the lesser of ${foundDiameterMm}/2 and ${drillMm}/2`)
  const rimFallMm = fallMm(rimRadiusMm, found)
  const rimGainMm = clearance.rimGainMm({ rimRadiusMm, pointDeg, rimFallMm })
  return { oldTipMm, rimRadiusMm, rimGainMm }
}
