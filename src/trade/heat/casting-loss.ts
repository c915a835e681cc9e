import { fewRecalled } from '../../formula/few-recalled.ts'
import type { Given, Plain } from '../../formula/given.ts'
import * as conduction from './conduction.ts'
import { type Film, filmAt } from './film.ts'
import * as heating from './heating.ts'
import { radiationWPerM2K } from './radiation.ts'
import { settledC } from './settle.ts'

/** All that a casting loses heat by: air, radiation where an emissivity is given, and the machine it is bolted to where one is given. */
export interface CastingLoss {
  readonly areaM2: Given
  readonly film: Film
  readonly emissivityRatio: Given | null
  readonly airC: Given
  readonly altitudeM: Given
  readonly machine: { readonly machineWPerK: Given; readonly machineC: Given } | null
}

/** Film coefficients at a surface temperature. */
function filmsAt({ film, emissivityRatio, airC, altitudeM }: Plain<CastingLoss>, surfaceC: number) {
  const filmWPerM2K = filmAt(film, { surfaceC, airC, altitudeM })
  if (emissivityRatio === null) return { filmWPerM2K, radiationWPerM2K: null, wholeWPerM2K: filmWPerM2K }
  const hrWPerM2K = radiationWPerM2K({ emissivityRatio, surfaceC, airC })
  return { filmWPerM2K, radiationWPerM2K: hrWPerM2K, wholeWPerM2K: conduction.wholeWPerM2K({ filmWPerM2K, radiationWPerM2K: hrWPerM2K }) }
}

/** The same at the temperature that the casting settles at under a power. */
const filmsWhenSteady = fewRecalled(64, ({ loss: x, powerW }: { readonly loss: Plain<CastingLoss>; readonly powerW: number }) => {
  if (x.film.by === 'value' && x.emissivityRatio === null) return filmsAt(x, x.airC)
  const coldestC = Math.min(x.airC, machineOf(x).machineC)
  const lostW = (surfaceC: number) => castingLostW(x, surfaceC)
  return filmsAt(x, settledC({ powerW, lostW, coldestC, hottestC: 400 - x.airC }))
})

/** All that takes heat away as one conductance to one temperature, with the films as they are when it has settled. */
export function outOf(x: Plain<CastingLoss>, powerW: number) {
  return together(x, filmsWhenSteady({ loss: x, powerW }))
}

/** The same with the films at a surface temperature. */
export function outAt(x: Plain<CastingLoss>, surfaceC: number) {
  return together(x, filmsAt(x, surfaceC))
}

function together(x: Plain<CastingLoss>, { filmWPerM2K, radiationWPerM2K, wholeWPerM2K }: ReturnType<typeof filmsAt>) {
  const { machineWPerK, machineC } = machineOf(x)
  const lossWPerK = heating.lossWPerK({ filmWPerM2K: wholeWPerM2K, areaM2: x.areaM2 })
  return {
    filmWPerM2K,
    radiationWPerM2K,
    outWPerK: conduction.outWPerK({ lossWPerK, machineWPerK }),
    outC: conduction.outC({ lossWPerK, airC: x.airC, machineWPerK, machineC })
  }
}

/** Heat that leaves the casting at a surface temperature. */
export function castingLostW(x: Plain<CastingLoss>, surfaceC: number): number {
  const { machineWPerK, machineC } = machineOf(x)
  return filmsAt(x, surfaceC).wholeWPerM2K * x.areaM2 * (surfaceC - x.airC) + machineWPerK * (surfaceC - machineC)
}

/** A casting bolted to nothing loses nothing that way. */
function machineOf({ machine, airC }: Plain<CastingLoss>) {
  return machine ?? { machineWPerK: 0, machineC: airC }
}
