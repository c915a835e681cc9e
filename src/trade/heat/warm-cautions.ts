import type { Plain } from '../../formula/given.ts'
import * as cautions from './cautions.ts'
import type { Dew } from './dew.ts'
import type { Film } from './film.ts'

/** From here a block is not of one temperature, and from here the rise of the air matters beside its flow (both memory, textbooks). */
const [MUCH_BIOT, MUCH_BUOYANCY] = [0.1, 0.1]

export interface Warmed {
  readonly filmBy: Film['by']
  readonly biotRatio: number | null
  readonly buoyancyRatio: number | null
  /** The metal at the start above the higher of dew and frost point, where that is known. */
  readonly startMarginK: number | null
  /** Neither radiation nor the machine behind it is reckoned with: a quick sum asks for neither. */
  readonly airAlone?: boolean
}

/** What has to be said beside a warm-up. */
export function warmCautions({ filmBy, biotRatio, buoyancyRatio, startMarginK, airAlone = true }: Warmed): readonly string[] {
  return [
    cautions.ICING,
    ...(airAlone ? [cautions.NO_RADIATION] : []),
    ...(filmBy === 'value' ? [] : [cautions.CORRELATION_SPREAD]),
    ...(biotRatio !== null && biotRatio >= MUCH_BIOT ? [cautions.ONE_TEMPERATURE] : []),
    ...(buoyancyRatio !== null && buoyancyRatio > MUCH_BUOYANCY && !filmBy.startsWith('mixed') ? [cautions.SLOW_AIR] : []),
    ...(startMarginK !== null && startMarginK <= 0 ? [cautions.FILM_OF_WATER] : []),
    cautions.MAKER
  ]
}

/** What has to be said beside moist air and a surface in it. */
export function dewCautions({ moisture, surfaceC }: Pick<Plain<Dew>, 'moisture' | 'surfaceC'>): readonly string[] {
  return [
    ...(moisture.by === 'wet-bulb' && moisture.wetBulbC <= 0 ? [cautions.BULB_BELOW_FREEZING] : []),
    ...(surfaceC === null ? [] : [cautions.MARGIN_IS_AN_ESTIMATE, cautions.COOLING_NOT_ENTERED, cautions.ICING])
  ]
}
