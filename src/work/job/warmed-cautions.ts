import type { WarmFit } from '../../fitting/warm-fit.ts'
import * as cautions from '../../trade/heat/cautions.ts'
import { warmCautions } from '../../trade/heat/warm-cautions.ts'
import type { Warmed } from './warm-worked.ts'

/** What has to be said beside a job's warm-up. */
export function warmedCautions({ block }: WarmFit, warmed: Warmed): readonly string[] {
  const { loss, capacity, body } = block
  const tested = loss.by === 'test' || capacity.by === 'test'
  return [
    ...warmCautions({
      filmBy: loss.by === 'test' ? 'value' : loss.film.by,
      biotRatio: warmed.biotRatio?.high ?? null,
      buoyancyRatio: warmed.buoyancyRatio?.high ?? null,
      startMarginK: warmed.startMarginK?.low ?? null,
      airAlone: false
    }),
    ...(warmed.dewMarginK === null ? [] : [cautions.MARGIN_IS_AN_ESTIMATE]),
    ...(body === null ? [] : [cautions.FLAT_JOINT]),
    ...(body !== null && tested ? [cautions.WARMS_AS_ONE] : [])
  ]
}
