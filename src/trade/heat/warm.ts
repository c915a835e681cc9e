import type { Given, Plain } from '../../formula/given.ts'
import { buoyancyAt, type Film, filmAt } from './film.ts'
import * as heating from './heating.ts'
import { settledC } from './settle.ts'
import { warmUp } from './warm-up.ts'

/** A heated block as one node: one temperature throughout, heat lost to the air alone, no radiation. */
export interface Warm {
  readonly powerW: Given
  readonly massKg: Given
  readonly heatJPerKgK: Given
  readonly areaM2: Given
  readonly airC: Given
  readonly altitudeM: Given
  readonly startC: Given
  readonly film: Film
  readonly targetC: Given | null
  /** What the Biot number needs. */
  readonly metal: { readonly densityKgPerM3: Given; readonly conductivityWPerMK: Given } | null
}

export function warm({ powerW, massKg, heatJPerKgK, areaM2, airC, altitudeM, startC, film, targetC, metal }: Plain<Warm>) {
  const { filmWPerM2K, buoyancyRatio } = steadyFilm({ film, powerW, areaM2, airC, altitudeM })
  const capacityJPerK = heating.capacityJPerK({ massKg, heatJPerKgK })
  const lossWPerK = heating.lossWPerK({ filmWPerM2K, areaM2 })
  const up = warmUp({ powerW, capacityJPerK, lossWPerK, airC, startC, targetC })
  const biotRatio = metal === null ? null : biot({ filmWPerM2K, massKg, areaM2, metal })
  return { ...up, filmWPerM2K, biotRatio, buoyancyRatio }
}

type Cooling = Pick<Plain<Warm>, 'film' | 'powerW' | 'areaM2' | 'airC' | 'altitudeM'>

/** The film at the steady temperature, where it has to hold. */
function steadyFilm({ film, powerW, areaM2, airC, altitudeM }: Cooling) {
  if (film.by === 'value') return { filmWPerM2K: film.filmWPerM2K, buoyancyRatio: null }
  const at = (surfaceC: number) => ({ surfaceC, airC, altitudeM })
  const lostW = (surfaceC: number) => filmAt(film, at(surfaceC)) * areaM2 * (surfaceC - airC)
  const surfaceC = settledC({ powerW, lostW, coldestC: airC, hottestC: 400 - airC })
  return { filmWPerM2K: filmAt(film, at(surfaceC)), buoyancyRatio: buoyancyAt(film, at(surfaceC)) }
}

function biot({ filmWPerM2K, massKg, areaM2, metal }: Biot): number {
  const { densityKgPerM3, conductivityWPerMK } = metal
  return heating.biotRatio({ filmWPerM2K, massKg, densityKgPerM3, areaM2, conductivityWPerMK })
}

interface Biot {
  readonly filmWPerM2K: number
  readonly massKg: number
  readonly areaM2: number
  readonly metal: { readonly densityKgPerM3: number; readonly conductivityWPerMK: number }
}
