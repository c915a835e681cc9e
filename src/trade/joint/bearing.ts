import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const bearingDiameterMm = formula('bearingDiameterMm', {
  says: 'mean bearing diameter of the face under the shoulder',
  symbol: 'Dkm',
  equation: '(dw + dh)/2',
  inputs: { faceMm: ['dw', 0.8, 600], holeMm: ['dh', 0, 600] },
  source: SOURCES['iso-16047'],
  of: ({ faceMm, holeMm }) => (faceMm + holeMm) / 2
})

export const usualBearingDiameterMm = formula('usualBearingDiameterMm', {
  says: 'mean bearing diameter of a hexagon, where nobody gave one',
  symbol: 'Dkm',
  equation: '1.25·d',
  inputs: { majorMm: ['d', 0.8, 300] },
  source: SOURCES['shigley-collar'],
  of: ({ majorMm }) => 1.25 * majorMm
})

export const bearingPressureMpa = formula('bearingPressureMpa', {
  says: 'pressure under the shoulder',
  symbol: 'p',
  equation: '4·F/(π·(dw^2 - dh^2))',
  inputs: { preloadN: ['F', 0, 1e8], faceMm: ['dw', 0.8, 600], holeMm: ['dh', 0, 600] },
  source: SOURCES['strength-of-materials'],
  of: ({ preloadN, faceMm, holeMm }) => (4 * preloadN) / (Math.PI * (faceMm ** 2 - holeMm ** 2))
})
