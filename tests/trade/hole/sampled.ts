import type { Plain } from '../../../src/formula/given.ts'
import type { OldHole } from '../../../src/trade/hole/old-hole.ts'

const RADII = 2000

/** Depth of the old bottom below its deepest point (so nought or negative), drawn from the shape itself. */
function bottomAt(radiusMm: number, { bottom, foundDiameterMm }: Plain<OldHole>): number {
  if (bottom.shape === 'flat') return 0
  if (bottom.shape === 'cone') return -radiusMm / Math.tan((bottom.angleDeg * Math.PI) / 360)
  // The arc has its centre one fillet above the flat and one fillet inside the wall.
  const beyondFlat = radiusMm - (foundDiameterMm / 2 - bottom.filletMm)
  if (beyondFlat <= 0) return 0
  return Math.sqrt(Math.max(0, bottom.filletMm ** 2 - beyondFlat ** 2)) - bottom.filletMm
}

function least(radiusMm: number, at: (radiusMm: number) => number): number {
  return Math.min(...Array.from({ length: RADII + 1 }, (_, i) => at((radiusMm * i) / RADII)))
}

/** Where a flat-ended rod comes to rest is the highest bottom under it. */
export function sampledTipMm(found: Plain<OldHole>): number {
  return found.foundDepthMm - least(found.rodMm / 2, radiusMm => bottomAt(radiusMm, found))
}

/** Least gap between the drill and the old bottom over many radii, its tip at a depth. */
export function sampledGapMm(found: Plain<OldHole>, tipMm: number): number {
  const coneUp = 1 / Math.tan((found.pointDeg * Math.PI) / 360)
  const bottomMm = sampledTipMm(found)
  return least(
    Math.min(found.foundDiameterMm, found.drillMm) / 2,
    radiusMm => bottomMm + bottomAt(radiusMm, found) - (tipMm - radiusMm * coneUp)
  )
}
