import { NONE, type ResultMap } from '../../report/result-map.ts'
import type { dew } from '../../trade/heat/dew.ts'
import * as moist from '../../trade/heat/moist-air.ts'

/** Above 0 °C there is neither a frost point nor a humidity over ice. */
export const DEW_RESULTS: ResultMap<ReturnType<typeof dew>> = {
  'dew-point': [moist.dewPointC, r => r.dewPointC],
  'frost-point': [moist.frostPointC, r => r.frostPointC ?? NONE],
  'vapour-pressure': [moist.vapourPressurePa, r => r.vapourPressurePa],
  humidity: [moist.humidityPercent, r => r.humidityPercent],
  'humidity-over-ice': [moist.humidityOverIcePercent, r => r.humidityOverIcePercent ?? NONE],
  'surface-margin': [moist.surfaceMarginK, r => r.surfaceMarginK]
}
