import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** A part taken off has negative mass; an arm forward of the datum is negative. */
export const momentKgM = formula('momentKgM', {
  says: 'moment of one item',
  symbol: 'M',
  equation: 'm·x',
  inputs: { massKg: ['m', -1e6, 1e6], armM: ['x', -1000, 1000] },
  source: SOURCES['weight-and-balance'],
  of: ({ massKg, armM }) => massKg * armM
})

export const centreM = formula('centreM', {
  says: 'centre of mass',
  symbol: 'x',
  equation: 'M/m',
  inputs: { momentKgM: ['M', -1e9, 1e9], massKg: ['m', 0.001, 1e7] },
  source: SOURCES['weight-and-balance'],
  of: ({ momentKgM, massKg }) => momentKgM / massKg
})

export const changeM = formula('changeM', {
  says: 'change of the centre of mass',
  symbol: 'Δx',
  equation: 'xn - xo',
  inputs: { centreM: ['xn', -1e4, 1e4], oldCentreM: ['xo', -1e4, 1e4] },
  source: SOURCES.arithmetic,
  of: ({ centreM, oldCentreM }) => centreM - oldCentreM
})

export const forwardMarginM = formula('forwardMarginM', {
  says: 'centre of mass behind the forward limit',
  symbol: 'rf',
  equation: 'x - lf',
  inputs: { centreM: ['x', -1e4, 1e4], forwardM: ['lf', -1000, 1000] },
  source: SOURCES.arithmetic,
  of: ({ centreM, forwardM }) => centreM - forwardM
})

export const rearwardMarginM = formula('rearwardMarginM', {
  says: 'centre of mass before the rearward limit',
  symbol: 'rr',
  equation: 'lr - x',
  inputs: { centreM: ['x', -1e4, 1e4], rearwardM: ['lr', -1000, 1000] },
  source: SOURCES.arithmetic,
  of: ({ centreM, rearwardM }) => rearwardM - centreM
})
