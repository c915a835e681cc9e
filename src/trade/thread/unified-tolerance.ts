import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// ASME B1.1 states these in inches; here they stand in mm, unrounded.

export const unifiedPitchToleranceMm = formula('unifiedPitchToleranceMm', {
  says: 'pitch diameter tolerance of class 2A, from which those of all classes follow',
  symbol: 't',
  equation: '25.4·(0.0015·(D/25.4)^(1/3) + 0.0015·√(L/25.4) + 0.015·(P/25.4)^(2/3))',
  inputs: { majorMm: ['D', 1, 50], engagementMm: ['L', 1, 75], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ majorMm, engagementMm, pitchMm }) =>
    25.4 * (0.0015 * (majorMm / 25.4) ** (1 / 3) + 0.0015 * Math.sqrt(engagementMm / 25.4) + 0.015 * (pitchMm / 25.4) ** (2 / 3))
})

export const unifiedMajorToleranceMm = formula('unifiedMajorToleranceMm', {
  says: 'major diameter tolerance of classes 2A and 3A',
  symbol: 'Td',
  equation: '25.4·0.060·(P/25.4)^(2/3)',
  inputs: { pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 25.4 * 0.06 * (pitchMm / 25.4) ** (2 / 3)
})

export const unifiedMajorTolerance1AMm = formula('unifiedMajorTolerance1AMm', {
  says: 'major diameter tolerance of class 1A',
  symbol: 'Td',
  equation: '25.4·0.090·(P/25.4)^(2/3)',
  inputs: { pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 25.4 * 0.09 * (pitchMm / 25.4) ** (2 / 3)
})

export const unifiedMinorToleranceMm = formula('unifiedMinorToleranceMm', {
  says: 'minor diameter tolerance of classes 1B and 2B from 1/4 inch up; below, the least they have',
  symbol: 'TK',
  equation: '0.25·P - 0.40·P^2/25.4',
  inputs: { pitchMm: ['P', 0.2, 6.35] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 0.25 * pitchMm - (0.4 * pitchMm ** 2) / 25.4
})

export const unifiedMinorToleranceBySizeMm = formula('unifiedMinorToleranceBySizeMm', {
  says: 'minor diameter tolerance of class 3B, and of 1B and 2B below 1/4 inch, before its limits',
  symbol: 'TK',
  equation: '25.4·(0.05·(P/25.4)^(2/3) + 0.03·P/D - 0.002)',
  inputs: { majorMm: ['D', 1, 50], pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ majorMm, pitchMm }) => 25.4 * (0.05 * (pitchMm / 25.4) ** (2 / 3) + (0.03 * pitchMm) / majorMm - 0.002)
})

export const unifiedMinorToleranceMostMm = formula('unifiedMinorToleranceMostMm', {
  says: 'the most that a minor diameter tolerance by size may be',
  symbol: 'TK',
  equation: '0.394·P',
  inputs: { pitchMm: ['P', 0.2, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 0.394 * pitchMm
})

export const unifiedMinorTolerance3BLeastMm = formula('unifiedMinorTolerance3BLeastMm', {
  says: 'the least minor diameter tolerance of class 3B, 13 threads to the inch and finer',
  symbol: 'TK',
  equation: '0.23·P - 1.5·P^2/25.4',
  inputs: { pitchMm: ['P', 0.2, 25.4 / 13] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 0.23 * pitchMm - (1.5 * pitchMm ** 2) / 25.4
})

export const unifiedMinorTolerance3BLeastCoarseMm = formula('unifiedMinorTolerance3BLeastCoarseMm', {
  says: 'the least minor diameter tolerance of class 3B, coarser than 13 threads to the inch',
  symbol: 'TK',
  equation: '0.12·P',
  inputs: { pitchMm: ['P', 25.4 / 13, 7] },
  source: SOURCES['asme-b1.1'],
  of: ({ pitchMm }) => 0.12 * pitchMm
})
