import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** The return length is 0 where the structure carries the current back: its resistance then stands among the joints. */
export const loopOhm = formula('loopOhm', {
  says: 'resistance there and back, without the load',
  symbol: 'r',
  equation: 'm·(a + b) + j',
  inputs: { hotOhmPerM: ['m', 0, 200], lengthM: ['a', 0, 10000], returnM: ['b', 0, 10000], jointsOhm: ['j', 0, 10000] },
  source: SOURCES.ohm,
  of: ({ hotOhmPerM, lengthM, returnM, jointsOhm }) => hotOhmPerM * (lengthM + returnM) + jointsOhm
})

export const fedA = formula('fedA', {
  says: 'current of a load of constant resistance at the end of the wire',
  symbol: 'I',
  equation: 'U/(R + r)',
  inputs: { busV: ['U', 0, 1000], resistanceOhm: ['R', 1e-6, 1e9], loopOhm: ['r', 0, 1e7] },
  source: SOURCES.ohm,
  of: ({ busV, resistanceOhm, loopOhm }) => busV / (resistanceOhm + loopOhm)
})
/** Of a circuit of several sources u is what its runs lose by the current of the load, over that current: what sources exchange is no part of it. */
/** Of a circuit of several sources, each held at its terminals: r is what the load sees of all runs, and what sources exchange is no part of u. */
export const dropV = formula('dropV', {
  says: 'drop there and back',
  symbol: 'u',
  equation: 'I·r',
  inputs: { currentA: ['I', 0, 1e9], loopOhm: ['r', 0, 1e7] },
  source: SOURCES.ohm,
  of: ({ currentA, loopOhm }) => currentA * loopOhm
})

export const dropPercent = formula('dropPercent', {
  says: 'drop as a share of the bus voltage',
  symbol: 'p',
  equation: '100·u/U',
  inputs: { dropV: ['u', 0, 1000], busV: ['U', 0.1, 1000] },
  source: SOURCES.arithmetic,
  of: ({ dropV, busV }) => (100 * dropV) / busV
})

export const loadV = formula('loadV', {
  says: 'voltage left at the load',
  symbol: 'V',
  equation: 'U - u',
  inputs: { busV: ['U', 0, 1000], dropV: ['u', 0, 1000] },
  source: SOURCES.kirchhoff,
  of: ({ busV, dropV }) => busV - dropV
})

export const loadW = formula('loadW', {
  says: 'power at the load',
  symbol: 'P',
  equation: 'V·I',
  inputs: { loadV: ['V', 0, 1000], currentA: ['I', 0, 1e9] },
  source: SOURCES.ohm,
  of: ({ loadV, currentA }) => loadV * currentA
})
