import type { Given, Plain } from '../formula/given.ts'
import type { Body } from '../trade/heat/block.ts'
import { bodyC, jointWPerK } from '../trade/heat/conduction.ts'

/** A heated part when the thermostat on its casting takes the power off. */
export interface HeldFit {
  readonly heatersW: readonly Given[]
  readonly offC: Given
  /** Where the part is told as a body of its own. */
  readonly joint: Pick<Body, 'contactMm2' | 'contactM2KPerW'> | null
}

/** The hottest spot then: until it opens, the part stands as far above the casting as its power drives it. */
export function heldFit({ heatersW, offC, joint }: Plain<HeldFit>) {
  if (joint === null) return { hottestC: offC }
  const powerW = heatersW.reduce((sum, heaterW) => sum + heaterW, 0)
  return { hottestC: bodyC({ castingC: offC, powerW, jointWPerK: jointWPerK(joint) }) }
}
