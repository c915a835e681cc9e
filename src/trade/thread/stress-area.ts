import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const stressAreaMm2 = formula('stressAreaMm2', {
  says: 'tensile stress area of an ISO metric thread',
  symbol: 'As',
  equation: 'π/4·((d2 + d3)/2)^2',
  inputs: { pitchDiameterMm: ['d2', 0.8, 300], rootDiameterMm: ['d3', 0.7, 300] },
  source: SOURCES['iso-898-1'],
  of: ({ pitchDiameterMm, rootDiameterMm }) => (Math.PI / 4) * ((pitchDiameterMm + rootDiameterMm) / 2) ** 2
})

export const unifiedStressAreaMm2 = formula('unifiedStressAreaMm2', {
  says: 'tensile stress area of a unified thread',
  symbol: 'As',
  equation: 'π/4·(D - 0.9743·P)^2',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['unified-stress-area'],
  of: ({ majorMm, pitchMm }) => (Math.PI / 4) * (majorMm - 0.9743 * pitchMm) ** 2
})
