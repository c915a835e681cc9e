import { noise } from './climb.ts'
import type { Values } from './values.ts'

/** All results along one input: at one end of its bounds, at the nominal, at the far end. */
interface Way {
  readonly end: Values
  readonly middle: Values
  readonly far: Values
}

/** So near a straight line, as a share of the whole change. A parabola that turns between the ends stands further off. */
const STRAIGHT = 0.05

/** Nearer an end than this share of the bounds, the nominal tells little of what is between. */
const APART = 0.1

/** Whether a result bends along an input, so that it may turn just inside an end. `share` of the way stands the nominal. */
export function bends({ end, middle, far }: Way, leaf: number, share: number): boolean {
  const whole = far[leaf]! - end[leaf]!
  const off = Math.abs(middle[leaf]! - end[leaf]! - share * whole)
  if (off <= noise(end[leaf]!)) return false
  return !(off <= STRAIGHT * Math.abs(whole)) || share < APART || share > 1 - APART
}
