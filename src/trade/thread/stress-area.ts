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
