import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const loadRatio = formula('loadRatio', {
  says: 'current over the continuous current of the wire',
  symbol: 'q',
  equation: 'I/Imax',
  inputs: { currentA: ['I', 0, 5000], ampacityA: ['Imax', 0.1, 2000] },
  source: SOURCES.arithmetic,
  of: ({ currentA, ampacityA }) => currentA / ampacityA
})

/** Plain ratio under the root: hotter than the heat balance says, on purpose. Not to be mixed with `squareLawC`. */
export const cautiousConductorC = formula('cautiousConductorC', {
  says: 'temperature of a wire below its full current, cautious estimate',
  symbol: 'T2',
  equation: 'T1+(TR-T1)·√(q)',
  inputs: { ambientC: ['T1', -90, 260], ratedC: ['TR', 20, 260], loadRatio: ['q', 0, 1] },
  source: SOURCES['ac-wire-temperature'],
  of: ({ ambientC, ratedC, loadRatio }) => ambientC + (ratedC - ambientC) * Math.sqrt(loadRatio)
})

export const squareLawC = formula('squareLawC', {
  says: 'temperature of a wire below its full current, heat in proportion to the square of the current',
  symbol: 'T2',
  equation: 'T1+(TR-T1)·q^2',
  inputs: { ambientC: ['T1', -90, 260], ratedC: ['TR', -90, 260], loadRatio: ['q', 0, 1] },
  source: SOURCES.practice,
  of: ({ ambientC, ratedC, loadRatio }) => ambientC + (ratedC - ambientC) * loadRatio ** 2
})
