import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { cotDeg } from './cotangent.ts'

/**
 * What the bottom of the old hole looks like. A fillet runs from the flat to the wall; as large as the radius, it makes a round bottom.
 * `assumed`: why it is taken for flat, where nobody said so.
 */
export type Bottom =
  | { readonly shape: 'flat'; readonly assumed?: string | undefined }
  | { readonly shape: 'cone'; readonly angleDeg: Given }
  | { readonly shape: 'radius'; readonly filletMm: Given }

export const coneFallMm = formula('coneFallMm', {
  says: 'fall of an old cone from a radius to the axis',
  symbol: 'b',
  equation: 'r·cot(α/2)',
  inputs: { radiusMm: ['r', 0, 50], angleDeg: ['α', 30, 180] },
  source: SOURCES.geometry,
  of: ({ radiusMm, angleDeg }) => radiusMm * cotDeg(angleDeg / 2)
})

export const filletFallMm = formula('filletFallMm', {
  says: 'fall of an old fillet to the flat',
  symbol: 'b',
  equation: 'f·(1 - √(1 - q^2))',
  inputs: { filletMm: ['f', 0.01, 50], intoFilletRatio: ['q', 0, 1] },
  source: SOURCES.geometry,
  of: ({ filletMm, intoFilletRatio }) => filletMm * (1 - Math.sqrt(1 - intoFilletRatio ** 2))
})

interface OldHole {
  readonly foundDiameterMm: Given
  readonly bottom: Bottom
}

/** How far the old bottom falls from a radius to the axis. */
export function fallMm(radiusMm: number, { foundDiameterMm, bottom }: Plain<OldHole>): number {
  switch (bottom.shape) {
    case 'flat':
      return 0
    case 'cone':
      return coneFallMm({ radiusMm, angleDeg: bottom.angleDeg })
    case 'radius':
      return roundedFallMm(radiusMm, foundDiameterMm / 2, bottom.filletMm)
    default:
      return bottom satisfies never
  }
}

/** Inside the bounds a fillet may come out larger than the hole, and a rod wider: the wall ends both. */
function roundedFallMm(radiusMm: number, wallMm: number, widestMm: number): number {
  const filletMm = Math.min(widestMm, wallMm)
  // Counted from the wall, so that it is exactly 1 there: the root is steep and would blow up a rounding.
  const intoFilletRatio = Math.min(1, Math.max(0, 1 - (wallMm - radiusMm) / filletMm))
  return filletFallMm({ filletMm, intoFilletRatio })
}
