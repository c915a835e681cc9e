import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { airAt } from './air-at.ts'
import * as atmosphere from './atmosphere.ts'
import { hilpertRatio, plateRatio } from './forced-nusselt.ts'
import * as moving from './moving-air.ts'
import * as still from './still-air.ts'

/** How heat passes from a surface to the air. `sizeMm`: diameter of a cylinder, length of a plate along the flow, height of a vertical plate. */
export type Film =
  | { readonly by: 'value'; readonly filmWPerM2K: Given }
  | { readonly by: 'churchill-bernstein' | 'hilpert' | 'flat-plate'; readonly airflowMPerS: Given; readonly sizeMm: Given }
  | { readonly by: 'vertical-plate' | 'horizontal-cylinder'; readonly sizeMm: Given }
  | { readonly by: 'mixed-plate' | 'mixed-cylinder'; readonly airflowMPerS: Given; readonly sizeMm: Given }

export const filmWPerM2K = formula('filmWPerM2K', {
  says: 'film coefficient',
  symbol: 'h',
  equation: '1000·Nu·k/L',
  inputs: { nusseltRatio: ['Nu', 0.1, 1e6], conductivityWPerMK: ['k', 0.01, 0.06], sizeMm: ['L', 0.1, 2000] },
  source: SOURCES['heat-balance'],
  of: ({ nusseltRatio, conductivityWPerMK, sizeMm }) => (1000 * nusseltRatio * conductivityWPerMK) / sizeMm
})

/** A surface in air. */
export interface Place {
  readonly surfaceC: number
  readonly airC: number
  readonly altitudeM: number
}

/** The film coefficient at a surface temperature, with the air's properties at the mean of surface and air. */
export function filmAt(film: Plain<Film>, place: Place): number {
  if (film.by === 'value') return film.filmWPerM2K
  const air = airBetween(place)
  return filmWPerM2K({ nusseltRatio: nusseltRatio(film, air), conductivityWPerMK: air.conductivityWPerMK, sizeMm: film.sizeMm })
}

/** How much of the film the air makes by rising: below 0.1 little, above 10 nearly all. Null where nothing blows or the film is a figure. */
export function buoyancyAt(film: Plain<Film>, place: Place): number | null {
  if (!('airflowMPerS' in film)) return null
  const air = airBetween(place)
  const { reynoldsRatio, prandtlRatio } = flow(film, air)
  const { rayleighRatio } = rise(film, air)
  return still.buoyancyRatio({ rayleighRatio, prandtlRatio, reynoldsRatio })
}

type ByAir = Exclude<Plain<Film>, { readonly by: 'value' }>
type Between = ReturnType<typeof airBetween>

function airBetween({ surfaceC, airC, altitudeM }: Place) {
  const pressurePa = atmosphere.atmospherePa({ altitudeM })
  const filmC = (surfaceC + airC) / 2
  return { filmC, gapK: Math.abs(surfaceC - airC), ...airAt({ filmC, pressurePa }) }
}

function nusseltRatio(film: ByAir, air: Between): number {
  switch (film.by) {
    case 'churchill-bernstein':
      return moving.cylinderNusseltRatio(flow(film, air))
    case 'hilpert':
      return hilpertRatio(flow(film, air))
    case 'flat-plate':
      return plateRatio(flow(film, air))
    case 'vertical-plate':
      return still.verticalPlateNusseltRatio(rise(film, air))
    case 'horizontal-cylinder':
      return still.horizontalCylinderNusseltRatio(rise(film, air))
    case 'mixed-cylinder':
      return together(moving.cylinderNusseltRatio(flow(film, air)), still.horizontalCylinderNusseltRatio(rise(film, air)), 4)
    case 'mixed-plate':
      return together(plateRatio(flow(film, air)), still.verticalPlateNusseltRatio(rise(film, air)), 3)
  }
}

function together(forcedRatio: number, naturalRatio: number, exponentFactor: 3 | 4): number {
  return still.mixedNusseltRatio({ forcedRatio, naturalRatio, exponentFactor })
}

function flow({ airflowMPerS, sizeMm }: Extract<ByAir, { readonly airflowMPerS: number }>, { kinematicM2PerS, prandtlRatio }: Between) {
  return { reynoldsRatio: moving.reynoldsRatio({ airflowMPerS, sizeMm, kinematicM2PerS }), prandtlRatio }
}

function rise({ sizeMm }: Pick<ByAir, 'sizeMm'>, { filmC, gapK, kinematicM2PerS, diffusivityM2PerS, prandtlRatio }: Between) {
  return { rayleighRatio: still.rayleighRatio({ gapK, sizeMm, filmC, kinematicM2PerS, diffusivityM2PerS }), prandtlRatio }
}

/** The same body when the air stops: a cylinder lies level, a plate stands. Null for a film given as a figure. */
export function stoppedAir(film: Film): Film | null {
  switch (film.by) {
    case 'value':
      return null
    case 'flat-plate':
    case 'mixed-plate':
      return { by: 'vertical-plate', sizeMm: film.sizeMm }
    case 'churchill-bernstein':
    case 'hilpert':
    case 'mixed-cylinder':
      return { by: 'horizontal-cylinder', sizeMm: film.sizeMm }
    case 'vertical-plate':
    case 'horizontal-cylinder':
      return film
  }
}
