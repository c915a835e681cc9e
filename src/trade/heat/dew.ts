import type { Given, Plain } from '../../formula/given.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'
import * as atmosphere from './atmosphere.ts'
import * as moist from './moist-air.ts'
import * as saturation from './saturation.ts'
import * as wet from './wet-bulb.ts'

type Moisture =
  | { readonly by: 'humidity'; readonly humidityPercent: Given }
  /** Above 0 °C the bulb carries water, at and below it ice. */
  | { readonly by: 'wet-bulb'; readonly wetBulbC: Given }

export interface Dew {
  readonly airC: Given
  readonly moisture: Moisture
  readonly altitudeM: Given
  readonly surfaceC: Given | null
}

/** Which figures over ice there are: a frost point and a humidity over ice end at 0 °C. */
export interface OverIce {
  readonly frostPoint: 'stands' | 'none'
  readonly humidity: 'stands' | 'none'
}

/** Settled at one point, the nominal one: bounds that cross 0 °C must not make a figure come and go. */
export function overIce(x: Plain<Dew>): OverIce {
  const dewPointC = silently(() => moist.dewPointC({ vapourPressurePa: airVapour(x).vapourPressurePa }))
  return { frostPoint: dewPointC > 0 ? 'none' : 'stands', humidity: x.airC > 0 ? 'none' : 'stands' }
}

/** Moist air by the Magnus form, without the enhancement factor. */
export function dew(x: Plain<Dew>, ice: OverIce = overIce(x)) {
  const { waterSaturationPa, vapourPressurePa, pressurePa } = airVapour({ ...x, moisture: withinAir(x) })
  const humidityPercent =
    x.moisture.by === 'humidity' ? x.moisture.humidityPercent : moist.humidityPercent({ vapourPressurePa, waterSaturationPa })
  const dewPointC = moist.dewPointC({ vapourPressurePa })
  const frostPointC = ice.frostPoint === 'none' ? null : frostOrMelting(vapourPressurePa)
  const pointC = frostPointC === null ? dewPointC : Math.max(dewPointC, frostPointC)
  return {
    vapourPressurePa,
    humidityPercent,
    humidityOverIcePercent: ice.humidity === 'none' ? null : overIcePercent(x.airC, vapourPressurePa),
    dewPointC,
    frostPointC,
    /** The higher of the two, and which of them that is. */
    pointC,
    governs: frostPointC === null ? ('dew point' as const) : ('frost point' as const),
    surfaceMarginK: x.surfaceC === null ? null : moist.surfaceMarginK({ surfaceC: x.surfaceC, pointC }),
    humidityRatio: moist.humidityRatio({ vapourPressurePa, pressurePa }),
    pressurePa
  }
}

/** Where bounds of air and bulb overlap the bulb stops at its air, which is saturated there. That it is no warmer at the nominal is asked before. */
function withinAir({ airC, moisture }: Plain<Dew>): Plain<Moisture> {
  return moisture.by === 'humidity' ? moisture : { ...moisture, wetBulbC: Math.min(moisture.wetBulbC, airC) }
}

function airVapour({ airC, moisture, altitudeM }: Plain<Dew>) {
  const waterSaturationPa = saturation.waterSaturationPa({ airC })
  const pressurePa = atmosphere.atmospherePa({ altitudeM })
  const vapourPressurePa =
    moisture.by === 'humidity'
      ? moist.vapourPressurePa({ humidityPercent: moistEnough(moisture.humidityPercent, waterSaturationPa), waterSaturationPa })
      : bulbVapourPa({ airC, wetBulbC: moisture.wetBulbC, pressurePa })
  return { waterSaturationPa, pressurePa, vapourPressurePa }
}

/** Drier air has its dew point below the range of the formula: told in the humidity that was given. */
function moistEnough(humidityPercent: number, waterSaturationPa: number): number {
  const leastPercent = (100 * moist.dewPointC.inputs.vapourPressurePa[1]) / waterSaturationPa
  if (humidityPercent >= leastPercent) return humidityPercent
  throw new OutsideRange('dewPointC', 'humidityPercent', humidityPercent, Number(leastPercent.toPrecision(3)), 100)
}

function bulbVapourPa({ airC, wetBulbC, pressurePa }: { readonly airC: number; readonly wetBulbC: number; readonly pressurePa: number }) {
  const depressionK = wet.depressionK({ airC, wetBulbC })
  if (wetBulbC > 0) {
    const waterSaturationPa = saturation.waterSaturationPa({ airC: wetBulbC })
    return wet.bulbVapourPressurePa({ waterSaturationPa, wetBulbC, pressurePa, depressionK })
  }
  const iceSaturationPa = saturation.iceSaturationPa({ airC: wetBulbC })
  return wet.icedVapourPressurePa({ iceSaturationPa, pressurePa, depressionK })
}

/** Where bounds reach above 0 °C there is no frost: the frost point stops at melting. */
function frostOrMelting(vapourPressurePa: number): number {
  return vapourPressurePa > 611.2 ? 0 : moist.frostPointC({ vapourPressurePa })
}

/** Where bounds reach above 0 °C the air has water beneath it, not ice: the two saturations meet there. */
function overIcePercent(airC: number, vapourPressurePa: number): number {
  const iceSaturationPa = airC > 0 ? saturation.waterSaturationPa({ airC }) : saturation.iceSaturationPa({ airC })
  return moist.humidityOverIcePercent({ vapourPressurePa, iceSaturationPa })
}
