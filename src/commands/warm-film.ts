import { boundsOf } from '../formula/bounds.ts'
import { Given } from '../formula/given.ts'
import type { Film } from '../trade/heat/film.ts'
import { compactSizeMm } from '../trade/heat/heating.ts'
import type { readMaterial } from '../trade/heat/read-material.ts'
import { refusal } from './refusal.ts'
import type { Taken } from './sum.ts'
import type { warm as description } from './warm.ts'
import type { Words } from './words.ts'

export type WarmWords = Words<typeof description.rows, { readonly material: (text: string) => ReturnType<typeof readMaterial> }>

interface AskedFilm {
  readonly film: Film
  readonly says: string
  readonly taken: Taken
}

/** How the heat goes to the air. Nothing said of the air: it stands still, and that is assumed. */
export function filmOf(words: WarmWords): AskedFilm | ReturnType<typeof refusal> {
  const { film, airflow, size } = words
  if (film !== null && (airflow !== null || size !== null))
    return refusal('--film', `--film beside ${airflow === null ? '--size' : '--airflow'}`, '--film alone, or --airflow with --size')
  if (film !== null) return { film: { by: 'value', filmWPerM2K: film }, says: `film ${film.value} W/(m²·K)`, taken: {} }
  if (airflow === null) return stillAir(words)
  if (size === null) return refusal('--size', '--airflow without --size', 'the diameter of the block across the flow as well')
  const blown = `cylinder of ${size.value} mm`
  if (airflow.high === 0) return { film: { by: 'horizontal-cylinder', sizeMm: size }, says: `still air around a ${blown}`, taken: {} }
  return {
    film: { by: 'churchill-bernstein', airflowMPerS: airflow, sizeMm: size },
    says: `air at ${airflow.value} m/s across a ${blown}`,
    taken: {}
  }
}

const STILL = 'still air'
const COMPACT = 'a cylinder as long as it is thick, of this surface'

/** That the air stands still is assumed whatever the size: the mark goes with the size, which is all that the film has left. */
function stillAir({ size, area }: WarmWords): AskedFilm {
  const airflow = { value: new Given(0), why: STILL }
  if (size !== null) {
    const sizeMm = new Given(size.value, { low: size.low, high: size.high, assumed: `default: ${STILL}`, at: ['airflow'] })
    return { film: { by: 'horizontal-cylinder', sizeMm }, says: `${STILL} around a cylinder of ${size.value} mm`, taken: { airflow } }
  }
  const compactMm = Number(boundsOf({ areaM2: area }, x => compactSizeMm(x)).value.toPrecision(2))
  const sizeMm = new Given(compactMm, { assumed: `default: ${STILL}, ${COMPACT}`, at: ['size'] })
  return {
    film: { by: 'horizontal-cylinder', sizeMm },
    says: `${STILL} around a cylinder of ${compactMm} mm`,
    taken: { airflow, size: { value: sizeMm, why: COMPACT } }
  }
}
