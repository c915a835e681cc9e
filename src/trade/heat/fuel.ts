import { SOURCES } from '../../formula/source.ts'
import { type Figure, figure } from './figure.ts'

/** What evaporation in the air of an engine is worked out with. */
export const FUEL_AND_AIR = {
  // 150 Btu/lb; engine texts print 305 to 350 kJ/kg.
  gasolineLatentJPerKg: figure(348900, SOURCES['alternative-fuel-table'], { low: 305000, high: 350000 }),
  gasolineHeatJPerKgK: figure(1700, SOURCES['evaporation-balance']),
  airHeatJPerKgK: figure(1005, SOURCES['evaporation-balance'])
} as const satisfies Record<string, Figure>
