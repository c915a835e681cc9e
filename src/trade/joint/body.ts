import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const stressDiameterMm = formula('stressDiameterMm', {
  says: 'diameter of a bar with the stress area of the thread',
  symbol: 'ds',
  equation: '2·√(As/π)',
  inputs: { stressAreaMm2: ['As', 0.1, 1e5] },
  source: SOURCES['iso-898-1'],
  of: ({ stressAreaMm2 }) => 2 * Math.sqrt(stressAreaMm2 / Math.PI)
})

export const ringAreaMm2 = formula('ringAreaMm2', {
  says: 'area of the ring left around the bore',
  symbol: 'A',
  equation: 'π/4·(D^2 - b^2)',
  inputs: { ringMm: ['D', 0.3, 300], boreMm: ['b', 0, 300] },
  source: SOURCES.geometry,
  of: ({ ringMm, boreMm }) => (Math.PI / 4) * (ringMm ** 2 - boreMm ** 2)
})

export const tensionMpa = formula('tensionMpa', {
  says: 'tension in the body',
  symbol: 'σ',
  equation: 'F/A',
  inputs: { preloadN: ['F', 0, 1e8], ringAreaMm2: ['A', 0.01, 1e5] },
  source: SOURCES['strength-of-materials'],
  of: ({ preloadN, ringAreaMm2 }) => preloadN / ringAreaMm2
})

export const torsionMpa = formula('torsionMpa', {
  says: 'greatest shear stress of the twisted ring, elastic',
  symbol: 'τ',
  equation: '16000·Mg·D/(π·(D^4 - b^4))',
  inputs: { threadTorqueNm: ['Mg', 0, 1e5], ringMm: ['D', 0.3, 300], boreMm: ['b', 0, 300] },
  source: SOURCES['strength-of-materials'],
  of: ({ threadTorqueNm, ringMm, boreMm }) => (16000 * threadTorqueNm * ringMm) / (Math.PI * (ringMm ** 4 - boreMm ** 4))
})

export const combinedMpa = formula('combinedMpa', {
  says: 'tension and twist of the body combined',
  symbol: 'σv',
  equation: '√(σ^2 + 3·τ^2)',
  inputs: { tensionMpa: ['σ', 0, 1e6], torsionMpa: ['τ', 0, 1e6] },
  source: SOURCES['strength-of-materials'],
  of: ({ tensionMpa, torsionMpa }) => Math.sqrt(tensionMpa ** 2 + 3 * torsionMpa ** 2)
})

export const proofPreloadN = formula('proofPreloadN', {
  says: 'preload at which the combined stress of the body reaches proof',
  symbol: 'Fp',
  equation: 'Rp/√(1/A^2 + 3·(16·at·D/(π·(D^4 - b^4)))^2)',
  inputs: {
    proofMpa: ['Rp', 10, 2500],
    ringAreaMm2: ['A', 0.01, 1e5],
    threadArmMm: ['at', 0.01, 300],
    ringMm: ['D', 0.3, 300],
    boreMm: ['b', 0, 300]
  },
  source: SOURCES['strength-of-materials'],
  of: ({ proofMpa, ...section }) => proofMpa / stressPerNewtonMpa(section)
})

export const breakingPreloadN = formula('breakingPreloadN', {
  says: 'preload at which the combined stress of the body reaches its tensile strength',
  symbol: 'Fb',
  equation: 'Rm/√(1/A^2 + 3·(16·at·D/(π·(D^4 - b^4)))^2)',
  inputs: {
    tensileMpa: ['Rm', 20, 2500],
    ringAreaMm2: ['A', 0.01, 1e5],
    threadArmMm: ['at', 0.01, 300],
    ringMm: ['D', 0.3, 300],
    boreMm: ['b', 0, 300]
  },
  source: SOURCES['strength-of-materials'],
  of: ({ tensileMpa, ...section }) => tensileMpa / stressPerNewtonMpa(section)
})

export const bodyMarginMpa = formula('bodyMarginMpa', {
  says: 'proof stress of the body beyond its combined stress',
  symbol: 'mb',
  equation: 'Rp - σv',
  inputs: { proofMpa: ['Rp', 10, 2500], combinedMpa: ['σv', 0, 1e6] },
  source: SOURCES.arithmetic,
  of: ({ proofMpa, combinedMpa: stressMpa }) => proofMpa - stressMpa
})

export const breakMarginMpa = formula('breakMarginMpa', {
  says: 'tensile strength of the body beyond its combined stress',
  symbol: 'mt',
  equation: 'Rm - σv',
  inputs: { tensileMpa: ['Rm', 20, 2500], combinedMpa: ['σv', 0, 1e6] },
  source: SOURCES.arithmetic,
  of: ({ tensileMpa, combinedMpa: stressMpa }) => tensileMpa - stressMpa
})

interface Section {
  readonly ringAreaMm2: number
  readonly threadArmMm: number
  readonly ringMm: number
  readonly boreMm: number
}

/** Combined stress of the body for each newton of preload. */
function stressPerNewtonMpa({ ringAreaMm2: areaMm2, threadArmMm, ringMm, boreMm }: Section): number {
  return Math.sqrt(1 / areaMm2 ** 2 + 3 * ((16 * threadArmMm * ringMm) / (Math.PI * (ringMm ** 4 - boreMm ** 4))) ** 2)
}
