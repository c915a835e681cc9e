import type { ColdAir } from '../../fitting/warm-fit.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import type { Missing } from '../../rules/missing.ts'
import type { Cooling } from '../../trade/heat/cooling.ts'
import type { Dew } from '../../trade/heat/dew.ts'
import { type Figure, givenOf } from '../../trade/heat/figure.ts'
import { FUEL_AND_AIR } from '../../trade/heat/fuel.ts'
import type { JobWarm } from './block-of.ts'

export type JobSurroundings = NonNullable<Job['surroundings']>

export const NO_AIR: Missing = { field: 'surroundings.air', measure: 'a thermometer in the shade on the coldest day it has to work' }
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
  return { airC, altitudeM, moisture: moistureOf(rest), cooling: coolingOf(cooling) }
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
