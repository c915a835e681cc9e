import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const partShearMpa = formula('partShearMpa', {
  says: "shear strength of the part's material",
  symbol: 'τs',
  equation: '0.6·Rm',
  inputs: { tensileMpa: ['Rm', 20, 2500] },
  source: SOURCES['shear-of-tensile'],
  of: ({ tensileMpa }) => 0.6 * tensileMpa
})

export const internalStripLoadN = formula('internalStripLoadN', {
  says: 'load that strips the thread of the casting',
  symbol: 'Fn',
  equation: 'τn·ASn',
  inputs: { castingShearMpa: ['τn', 5, 1000], internalShearAreaMm2: ['ASn', 0.01, 1e6] },
  source: SOURCES['h28-2b'],
  of: ({ castingShearMpa, internalShearAreaMm2 }) => castingShearMpa * internalShearAreaMm2
})

export const externalStripLoadN = formula('externalStripLoadN', {
  says: 'load that strips the thread of the part',
  symbol: 'Fs',
  equation: 'τs·ASs',
  inputs: { partShearMpa: ['τs', 5, 1500], externalShearAreaMm2: ['ASs', 0.01, 1e6] },
  source: SOURCES['h28-2b'],
  of: ({ partShearMpa, externalShearAreaMm2 }) => partShearMpa * externalShearAreaMm2
})

export const breakingLoadN = formula('breakingLoadN', {
  says: 'load that breaks the threaded part in tension',
  symbol: 'Fm',
  equation: 'Rm·A0',
  inputs: { tensileMpa: ['Rm', 20, 2500], netStressAreaMm2: ['A0', 0.01, 1e5] },
  source: SOURCES['iso-898-1'],
  of: ({ tensileMpa, netStressAreaMm2 }) => tensileMpa * netStressAreaMm2
})

export const engagementRequiredMm = formula('engagementRequiredMm', {
  says: 'engagement at which the part breaks before the casting strips',
  symbol: 'LEr',
  equation: 'Fm/(τn·wn)',
  inputs: { breakingLoadN: ['Fm', 0.1, 1e8], castingShearMpa: ['τn', 5, 1000], internalShearWidthMm: ['wn', 0.01, 1500] },
  source: SOURCES['h28-2b'],
  of: ({ breakingLoadN, castingShearMpa, internalShearWidthMm }) => breakingLoadN / (castingShearMpa * internalShearWidthMm)
})

export const castingMarginN = formula('castingMarginN', {
  says: 'pull that the thread of the casting holds beyond the preload',
  symbol: 'mn',
  equation: 'Fn - F',
  inputs: { internalStripLoadN: ['Fn', 0.01, 1e9], preloadN: ['F', 0, 1e8] },
  source: SOURCES.arithmetic,
  of: ({ internalStripLoadN: loadN, preloadN }) => loadN - preloadN
})

export const partMarginN = formula('partMarginN', {
  says: 'pull that the thread of the part holds beyond the preload',
  symbol: 'ms',
  equation: 'Fs - F',
  inputs: { externalStripLoadN: ['Fs', 0.01, 1e9], preloadN: ['F', 0, 1e8] },
  source: SOURCES.arithmetic,
  of: ({ externalStripLoadN: loadN, preloadN }) => loadN - preloadN
})

export const engagementSpareMm = formula('engagementSpareMm', {
  says: 'engagement beyond that at which the part breaks first',
  symbol: 'yr',
  equation: 'LE - LEr',
  inputs: { engagementMm: ['LE', 0, 500], engagementRequiredMm: ['LEr', 0, 1e5] },
  source: SOURCES.arithmetic,
  of: ({ engagementMm, engagementRequiredMm: requiredMm }) => engagementMm - requiredMm
})
