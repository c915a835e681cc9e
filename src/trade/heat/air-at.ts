import * as air from './air.ts'
import * as atmosphere from './atmosphere.ts'

/** What a film of air is worked out with, at its mean temperature. */
export function airAt({ filmC, pressurePa }: { readonly filmC: number; readonly pressurePa: number }) {
  const densityKgPerM3 = atmosphere.densityKgPerM3({ pressurePa, airC: filmC })
  const reducedRatio = air.reducedRatio({ filmC })
  const collisionRatio = air.collisionRatio({ reducedRatio })
  const viscosityPaS = air.viscosityPaS({ filmC, collisionRatio })
  const conductivityWPerMK = air.conductivityWPerMK({ filmC, viscosityPaS })
  const kinematicM2PerS = air.kinematicM2PerS({ viscosityPaS, densityKgPerM3 })
  const diffusivityM2PerS = air.diffusivityM2PerS({ conductivityWPerMK, densityKgPerM3 })
  const prandtlRatio = air.prandtlRatio({ kinematicM2PerS, diffusivityM2PerS })
  return { densityKgPerM3, viscosityPaS, conductivityWPerMK, kinematicM2PerS, diffusivityM2PerS, prandtlRatio }
}
