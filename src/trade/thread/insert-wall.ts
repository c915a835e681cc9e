import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const insertWallTakenMm = formula('insertWallTakenMm', {
  says: 'metal that the hole for a wire thread insert takes from the wall, beyond the thread it replaces',
  symbol: 'wt',
  equation: '(Ds - D)/2',
  inputs: { insertMajorMm: ['Ds', 1, 120], majorMm: ['D', 1, 100] },
  source: SOURCES.geometry,
  of: ({ insertMajorMm, majorMm }) => (insertMajorMm - majorMm) / 2
})

/** The factor is worked out for a width of 1.4 diameters and more: thinner, nobody says what the thread still holds. */
export const insertWallLeastMm = formula('insertWallLeastMm', {
  says: 'least wall beside the present thread for which the strength of the thread of the insert can be worked out',
  symbol: 'w1',
  equation: 'wt + (1.4 - 1)/2·Ds',
  inputs: { insertWallTakenMm: ['wt', 0, 10], insertMajorMm: ['Ds', 1, 120] },
  source: SOURCES.alexander,
  of: ({ insertWallTakenMm, insertMajorMm }) => insertWallTakenMm + ((1.4 - 1) / 2) * insertMajorMm
})

/** From a width of 1.9 diameters up the wall no longer gives way under the flanks. */
export const insertWallFullMm = formula('insertWallFullMm', {
  says: 'wall beside the present thread from which the thread of the insert loses nothing by dilation',
  symbol: 'w2',
  equation: 'wt + (1.9 - 1)/2·Ds',
  inputs: { insertWallTakenMm: ['wt', 0, 10], insertMajorMm: ['Ds', 1, 120] },
  source: SOURCES.alexander,
  of: ({ insertWallTakenMm, insertMajorMm }) => insertWallTakenMm + ((1.9 - 1) / 2) * insertMajorMm
})
