import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// The profile is that of ISO 68-1; ASME B1.1 writes it in the pitch.

export const unifiedPitchDiameterMm = formula('unifiedPitchDiameterMm', {
  says: 'basic pitch diameter of a unified thread',
  symbol: 'E',
  equation: 'D - 0.64951905·P',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ majorMm, pitchMm }) => majorMm - 0.64951905 * pitchMm
})

export const unifiedMinorDiameterMm = formula('unifiedMinorDiameterMm', {
  says: 'basic minor diameter of a unified thread',
  symbol: 'K',
  equation: 'D - 1.08253175·P',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ majorMm, pitchMm }) => majorMm - 1.08253175 * pitchMm
})

export const unifiedRootDiameterMm = formula('unifiedRootDiameterMm', {
  says: 'diameter over the rounded root of a unified external thread',
  symbol: 'd3',
  equation: 'D - 1.22686933·P',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ majorMm, pitchMm }) => majorMm - 1.22686933 * pitchMm
})

export const unifiedStressAreaMm2 = formula('unifiedStressAreaMm2', {
  says: 'tensile stress area of a unified thread',
  symbol: 'As',
  equation: 'π/4·(D - 0.9743·P)^2',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['unified-stress-area'],
  of: ({ majorMm, pitchMm }) => (Math.PI / 4) * (majorMm - 0.9743 * pitchMm) ** 2
})
