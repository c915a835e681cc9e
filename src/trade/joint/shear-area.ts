import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

// The range of diameters and pitches is that of the thread tables, with room at both ends.

export const internalShearWidthMm = formula('internalShearWidthMm', {
  says: "shear area of the casting's thread for each mm of engagement, least material",
  symbol: 'wn',
  equation: 'π/P·dmin·(P/2 + 0.57735·(dmin - D2max))',
  inputs: { pitchMm: ['P', 0.2, 8], screwMajorMinMm: ['dmin', 0.8, 300], holePitchMaxMm: ['D2max', 0.8, 300] },
  source: SOURCES['h28-2b'],
  of: ({ pitchMm, screwMajorMinMm, holePitchMaxMm }) =>
    (Math.PI / pitchMm) * screwMajorMinMm * (pitchMm / 2 + 0.57735 * (screwMajorMinMm - holePitchMaxMm))
})

export const externalShearWidthMm = formula('externalShearWidthMm', {
  says: "shear area of the part's thread for each mm of engagement, least material",
  symbol: 'ws',
  equation: 'π/P·D1max·(P/2 + 0.57735·(d2min - D1max))',
  inputs: { pitchMm: ['P', 0.2, 8], holeMinorMaxMm: ['D1max', 0.5, 300], screwPitchMinMm: ['d2min', 0.5, 300] },
  source: SOURCES['h28-2b'],
  of: ({ pitchMm, holeMinorMaxMm, screwPitchMinMm }) =>
    (Math.PI / pitchMm) * holeMinorMaxMm * (pitchMm / 2 + 0.57735 * (screwPitchMinMm - holeMinorMaxMm))
})

export const internalShearAreaMm2 = formula('internalShearAreaMm2', {
  says: "shear area of the casting's thread over the whole engagement",
  symbol: 'ASn',
  equation: 'LE·wn',
  inputs: { engagementMm: ['LE', 0.1, 500], internalShearWidthMm: ['wn', 0.01, 1500] },
  source: SOURCES['h28-2b'],
  of: ({ engagementMm, internalShearWidthMm }) => engagementMm * internalShearWidthMm
})

export const externalShearAreaMm2 = formula('externalShearAreaMm2', {
  says: "shear area of the part's thread over the whole engagement",
  symbol: 'ASs',
  equation: 'LE·ws',
  inputs: { engagementMm: ['LE', 0.1, 500], externalShearWidthMm: ['ws', 0.01, 1500] },
  source: SOURCES['h28-2b'],
  of: ({ engagementMm, externalShearWidthMm }) => engagementMm * externalShearWidthMm
})
