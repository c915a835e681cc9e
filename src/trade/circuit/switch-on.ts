import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The coefficient is of the resistance at 20 °C, in percent for each kelvin, as makers print it. */
export const coldOhm = formula('coldOhm', {
  says: 'resistance of one at 20 °C',
  symbol: 'R20',
  equation: 'R/(1 + c/100·(h - 20))',
  inputs: { resistanceOhm: ['R', 1e-6, 1e9], resistanceChangePerK: ['c', -0.05, 1], hotC: ['h', -60, 1000] },
  source: SOURCES.ohm,
  of: ({ resistanceOhm, resistanceChangePerK, hotC }) => resistanceOhm / (1 + (resistanceChangePerK / 100) * (hotC - 20))
})

/** At one voltage, so many times the current is that part of the resistance. */
export const multipliedOhm = formula('multipliedOhm', {
  says: 'resistance of one at 20 °C, from its cold multiple',
  symbol: 'R20',
  equation: 'R/x',
  inputs: { resistanceOhm: ['R', 1e-6, 1e9], coldFactor: ['x', 0.1, 20] },
  source: SOURCES.arithmetic,
  of: ({ resistanceOhm, coldFactor }) => resistanceOhm / coldFactor
})

/** What an ohmmeter should read before the first switch-on. */
export const meterOhm = formula('meterOhm', {
  says: 'resistance of all in parallel at 20 °C: what a meter should read cold',
  symbol: 'Rm',
  equation: 'R20/n',
  inputs: { coldOhm: ['R20', 1e-7, 1e10], count: ['n', 1, 1000] },
  source: SOURCES.ohm,
  of: ({ coldOhm, count }) => coldOhm / count
})

export const coldA = formula('coldA', {
  says: 'current through all at switch-on, 20 °C',
  symbol: 'I20',
  equation: 'n·U/R20',
  inputs: { atV: ['U', 0, 1000], coldOhm: ['R20', 1e-7, 1e10], count: ['n', 1, 1000] },
  source: SOURCES.ohm,
  of: ({ atV, coldOhm, count }) => (count * atV) / coldOhm
})

/** A ceramic element takes a multiple of its steady current while it is cold; the multiple is the maker's. */
export const multipliedA = formula('multipliedA', {
  says: 'current through all at switch-on, 20 °C',
  symbol: 'I20',
  equation: 'x·In',
  inputs: { togetherA: ['In', 0, 1e9], coldFactor: ['x', 0.1, 20] },
  source: SOURCES.arithmetic,
  of: ({ togetherA, coldFactor }) => coldFactor * togetherA
})
