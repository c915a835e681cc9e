import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** A load of constant resistance takes its rated power at its rated voltage only. */
export const resistanceOhm = formula('resistanceOhm', {
  says: 'resistance of the load, hot, at rated voltage',
  symbol: 'R',
  equation: 'U^2/P',
  inputs: { ratedV: ['U', 0.1, 1000], powerW: ['P', 0.001, 100000] },
  source: SOURCES.ohm,
  of: ({ ratedV, powerW }) => ratedV ** 2 / powerW
})

export const currentA = formula('currentA', {
  says: 'current through one',
  symbol: 'I',
  equation: 'U/R',
  inputs: { atV: ['U', 0, 1000], resistanceOhm: ['R', 1e-6, 1e9] },
  source: SOURCES.ohm,
  of: ({ atV, resistanceOhm }) => atV / resistanceOhm
})

export const powerW = formula('powerW', {
  says: 'power of one',
  symbol: 'P',
  equation: 'U^2/R',
  inputs: { atV: ['U', 0, 1000], resistanceOhm: ['R', 1e-6, 1e9] },
  source: SOURCES.ohm,
  of: ({ atV, resistanceOhm }) => atV ** 2 / resistanceOhm
})

export const togetherOhm = formula('togetherOhm', {
  says: 'resistance of all in parallel',
  symbol: 'Rn',
  equation: 'R/n',
  inputs: { resistanceOhm: ['R', 1e-6, 1e9], count: ['n', 1, 1000] },
  source: SOURCES.ohm,
  of: ({ resistanceOhm, count }) => resistanceOhm / count
})

export const togetherA = formula('togetherA', {
  says: 'current through all in parallel',
  symbol: 'In',
  equation: 'n·I',
  inputs: { currentA: ['I', 0, 1e9], count: ['n', 1, 1000] },
  source: SOURCES.ohm,
  of: ({ currentA, count }) => count * currentA
})

export const togetherW = formula('togetherW', {
  says: 'power of all in parallel',
  symbol: 'Pn',
  equation: 'n·P',
  inputs: { powerW: ['P', 0, 1e12], count: ['n', 1, 1000] },
  source: SOURCES.ohm,
  of: ({ powerW, count }) => count * powerW
})
