import type { Given, Plain } from '../../formula/given.ts'
import * as airCooling from './air-cooling.ts'

/** How much colder the air at a part is than the air around: measured, or by fuel that evaporates and a throat. */
export type Cooling =
  | { readonly by: 'fall'; readonly fallK: Given }
  | {
      readonly by: 'flow'
      readonly fuelAirRatio: Given
      readonly throatMPerS: Given
      readonly latentJPerKg: Given
      readonly fuelHeatJPerKgK: Given
      readonly airHeatJPerKgK: Given
    }

export function airAtPartC(airC: number, cooling: Plain<Cooling>): number {
  if (cooling.by === 'fall') return airCooling.cooledC({ airC, evaporationDropK: cooling.fallK, venturiDropK: 0 })
  const { fuelAirRatio, throatMPerS, latentJPerKg, fuelHeatJPerKgK, airHeatJPerKgK } = cooling
  const evaporationDropK = airCooling.evaporationDropK({ fuelAirRatio, latentJPerKg, airHeatJPerKgK, fuelHeatJPerKgK })
  const venturiDropK = airCooling.venturiDropK({ throatMPerS, airHeatJPerKgK })
  return airCooling.cooledC({ airC, evaporationDropK, venturiDropK })
}
