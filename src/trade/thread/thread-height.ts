import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The base of inch charts and of "75 % thread". */
export const heightOn34Percent = formula('heightOn34Percent', {
  says: 'thread height on the base 3/4 H',
  symbol: 'h34',
  equation: '100·(D - h)/(2·3/4·H)',
  inputs: { majorMm: ['D', 1, 300], holeDiameterMm: ['h', 0.1, 300], triangleHeightMm: ['H', 0.17, 7] },
  source: SOURCES['thread-height'],
  of: ({ majorMm, holeDiameterMm, triangleHeightMm }) => (100 * (majorMm - holeDiameterMm)) / (2 * (3 / 4) * triangleHeightMm)
})

/** The base of the basic thread overlap, of later handbooks and of tap makers' "engagement ratio". */
export const heightOn58Percent = formula('heightOn58Percent', {
  says: 'thread height on the base 5/8 H',
  symbol: 'h58',
  equation: '100·(D - h)/(2·5/8·H)',
  inputs: { majorMm: ['D', 1, 300], holeDiameterMm: ['h', 0.1, 300], triangleHeightMm: ['H', 0.17, 7] },
  source: SOURCES['thread-height'],
  of: ({ majorMm, holeDiameterMm, triangleHeightMm }) => (100 * (majorMm - holeDiameterMm)) / (2 * (5 / 8) * triangleHeightMm)
})

export const heightHoleMm = formula('heightHoleMm', {
  says: 'hole that leaves a thread height on the base 3/4 H',
  symbol: 'h',
  equation: 'D - k/100·1.299038·P',
  inputs: { majorMm: ['D', 1, 300], heightPercent: ['k', 10, 120], pitchMm: ['P', 0.2, 8] },
  source: SOURCES['thread-height'],
  of: ({ majorMm, heightPercent, pitchMm }) => majorMm - (heightPercent / 100) * 1.299038 * pitchMm
})
