import type { Given, Plain } from '../formula/given.ts'
import { type Body, bodiesC, partC } from '../trade/heat/heated-parts.ts'

/** A heated part when the thermostat on its casting takes the power off. */
export interface HeldFit {
  readonly heatersW: readonly Given[]
  readonly offC: Given
  /** Where the part is told as a body of its own. */
  readonly joint: Pick<Body, 'contactMm2' | 'contactM2KPerW'> | null
}

/** The casting then, and each part: until it opens, a part stands as far above the casting as its power drives it. */
export function heldFit({ heatersW, offC, joint }: Plain<HeldFit>) {
  const bodies = bodiesC(joint, offC, heatersW)
  return { steadyC: offC, bodiesC: bodies, partC: partC(offC, bodies) }
}
