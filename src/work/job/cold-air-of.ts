import type { ColdAir } from '../../fitting/warm-fit.ts'
import { Given, type Plain } from '../../formula/given.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import type { Job } from '../../job/read-job.ts'
import type { Missing } from '../../rules/missing.ts'
import type { Cooling } from '../../trade/heat/cooling.ts'
import { type Dew, dew } from '../../trade/heat/dew.ts'
import { type Figure, givenOf } from '../../trade/heat/figure.ts'
import { FUEL_AND_AIR } from '../../trade/heat/fuel.ts'
import type { JobWarm } from './block-of.ts'

export type JobSurroundings = NonNullable<Job['surroundings']>

export const NO_AIR: Missing = { field: 'surroundings.air', measure: 'a thermometer in the shade on the coldest day it has to work' }
const NO_POINT: Missing = {
  field: 'a dew point',
  measure:
    'this air is colder or drier than the formula is good for, at one end of its bounds at least: measure air and moisture closer, or give the target as a temperature'
}
export const NO_HUMIDITY: Missing = { field: 'surroundings.humidity', measure: 'a hygrometer or a wet bulb beside the casting' }

/** The coldest air at the part. Without a word on evaporation and throat nothing behind them can be judged. */
export function coldAirOf({ air: airC, altitude: altitudeM, ...rest }: JobSurroundings, { cooling, path }: JobWarm): ColdAir | Missing {
  if (cooling === null)
    return {
      field: 'warm.cooling',
      measure:
        'fall: 0 K where no fuel evaporates and no throat speeds up the air; else measure the air at the part, or give fuel-air and throat',
      at: path
    }
  const moisture = moistureOf(rest)
  return {
    airC,
    altitudeM,
    moisture: moisture !== null && hasPoint({ airC, altitudeM, moisture }) ? moisture : null,
    cooling: coolingOf(cooling)
  }
}

/** Whether the air is warm and moist enough for its dew point, at its driest. */
export function hasPoint({ airC, altitudeM, moisture }: Pick<Dew, 'airC' | 'altitudeM' | 'moisture'>): boolean {
  const driest: Pick<Plain<Dew>, 'airC' | 'moisture'> = moisture.by === 'humidity'
    ? { airC: airC.low, moisture: { ...moisture, humidityPercent: moisture.humidityPercent.low } }
    : { airC: airC.high, moisture: { ...moisture, wetBulbC: moisture.wetBulbC.low } }
  try {
    dew({ ...driest, altitudeM: altitudeM.value, surfaceC: null })
    return true
  } catch (error) {
    // Whatever else is wrong is told where it is worked out.
    return !(error instanceof OutsideRange && TOO_DRY.includes(error.formula))
  }
}

/** What has no answer for too little vapour, or for less than none. */
const TOO_DRY = ['dewPointC', 'humidityPercent']

/** Of all it lacks: what was given, or a formula for it. */
export function noPointOf({ humidity, 'wet-bulb': wetBulb }: Pick<JobSurroundings, 'humidity' | 'wet-bulb'>): Missing {
  return humidity === null && wetBulb === null ? NO_HUMIDITY : NO_POINT
}

export function moistureOf({ humidity, 'wet-bulb': wetBulbC }: Pick<JobSurroundings, 'humidity' | 'wet-bulb'>): Dew['moisture'] | null {
  if (humidity !== null) return { by: 'humidity', humidityPercent: humidity }
  return wetBulbC === null ? null : { by: 'wet-bulb', wetBulbC }
}

function coolingOf({ fall, 'fuel-air': fuelAirRatio, throat, path }: NonNullable<JobWarm['cooling']>): Cooling {
  if (fall !== null) return { by: 'fall', fallK: fall }
  const fuel = (figure: Figure) => givenOf(figure, [...path, 'fuel-air'])
  const none = (field: string, why: string) => new Given(0, { assumed: `default: ${why}`, at: [...path, field] })
  return {
    by: 'flow',
    fuelAirRatio: fuelAirRatio ?? none('fuel-air', 'no fuel evaporates'),
    throatMPerS: throat ?? none('throat', 'no throat'),
    latentJPerKg: fuel(FUEL_AND_AIR.gasolineLatentJPerKg),
    fuelHeatJPerKgK: fuel(FUEL_AND_AIR.gasolineHeatJPerKgK),
    airHeatJPerKgK: fuel(FUEL_AND_AIR.airHeatJPerKgK)
  }
}
