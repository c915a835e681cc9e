import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** None where the air alone holds the target. The ratio is the least that a heater gives of its rating, by its tolerance. */
export const leastPowerW = formula('leastPowerW', {
  says: 'least rated power that holds the target in cold moving air at low bus',
  symbol: 'Pl',
  equation: 'max(0, G·(Tt - Ta))·(Vr/V)^2/s',
  inputs: {
    lossWPerK: ['G', 1e-5, 1e6],
    targetC: ['Tt', -90, 500],
    airC: ['Ta', -90, 150],
    ratedV: ['Vr', 1, 1000],
    busV: ['V', 1, 1000],
    ratingRatio: ['s', 1e-6, 1]
  },
  source: SOURCES['heat-balance'],
  of: ({ lossWPerK, targetC, airC, ratedV, busV, ratingRatio }) =>
    (Math.max(0, lossWPerK * (targetC - airC)) * (ratedV / busV) ** 2) / ratingRatio
})

/** The ratio is the greatest that a heater gives of its rating. */
export const greatestPowerW = formula('greatestPowerW', {
  says: 'greatest rated power that stays below the limit in hot still air at high bus',
  symbol: 'Pg',
  equation: 'G·(Tl - Ta)·(Vr/V)^2/s',
  inputs: {
    lossWPerK: ['G', 1e-5, 1e6],
    limitC: ['Tl', -90, 500],
    airC: ['Ta', -90, 150],
    ratedV: ['Vr', 1, 1000],
    busV: ['V', 1, 1000],
    ratingRatio: ['s', 1, 1e6]
  },
  source: SOURCES['heat-balance'],
  of: ({ lossWPerK, limitC, airC, ratedV, busV, ratingRatio }) => (lossWPerK * (limitC - airC) * (ratedV / busV) ** 2) / ratingRatio
})

export const asRatedW = formula('asRatedW', {
  says: 'rated power of a heater that gives a power at a temperature of its own, its resistance following that',
  symbol: 'Pr',
  equation: 'P·(1 + c/100·(T - 20))/(1 + c/100·(h - 20))',
  inputs: { powerW: ['P', -1e9, 1e9], resistanceChangePerK: ['c', -0.05, 1], partC: ['T', -60, 1000], hotC: ['h', -60, 1000] },
  source: SOURCES.ohm,
  of: ({ powerW, resistanceChangePerK, partC, hotC }) =>
    (powerW * (1 + (resistanceChangePerK / 100) * (partC - 20))) / (1 + (resistanceChangePerK / 100) * (hotC - 20))
})

export const spanW = formula('spanW', {
  says: 'room between least and greatest power',
  symbol: 'ΔP',
  equation: 'Pg - Pl',
  inputs: { leastPowerW: ['Pl', -1e9, 1e9], greatestPowerW: ['Pg', -1e9, 1e9] },
  source: SOURCES.arithmetic,
  of: ({ leastPowerW, greatestPowerW }) => greatestPowerW - leastPowerW
})
