import type { Bounded } from '../formula/bounds.ts'

/** A drill that stops short of the old bottom leaves what lies below that, as thin as it is. */
export function thinnestFloor(metalLeftMm: Bounded, metalBelowMm: Bounded): Bounded {
  return metalBelowMm.low < metalLeftMm.low ? metalBelowMm : metalLeftMm
}
