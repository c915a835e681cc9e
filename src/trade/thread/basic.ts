import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

export const triangleHeightMm = formula('triangleHeightMm', {
  says: 'height of the fundamental triangle',
  symbol: 'H',
  equation: '√(3)/2·P',
  inputs: { pitchMm: ['P', 0.2, 8] },
  source: SOURCES['iso-68-1'],
  of: ({ pitchMm }) => (Math.sqrt(3) / 2) * pitchMm
})

export const pitchDiameterMm = formula('pitchDiameterMm', {
  says: 'basic pitch diameter',
  symbol: 'D2',
  equation: 'D - 3/4·H',
  inputs: { majorMm: ['D', 1, 300], triangleHeightMm: ['H', 0.17, 7] },
  source: SOURCES['iso-68-1'],
  of: ({ majorMm, triangleHeightMm }) => majorMm - (3 / 4) * triangleHeightMm
})

export const minorDiameterMm = formula('minorDiameterMm', {
  says: 'basic minor diameter',
  symbol: 'D1',
  equation: 'D - 5/4·H',
  inputs: { majorMm: ['D', 1, 300], triangleHeightMm: ['H', 0.17, 7] },
  source: SOURCES['iso-68-1'],
  of: ({ majorMm, triangleHeightMm }) => majorMm - (5 / 4) * triangleHeightMm
})

export const rootDiameterMm = formula('rootDiameterMm', {
  says: 'diameter over the rounded root of the external thread',
  symbol: 'd3',
  equation: 'D - 17/12·H',
  inputs: { majorMm: ['D', 1, 300], triangleHeightMm: ['H', 0.17, 7] },
  source: SOURCES['iso-68-1'],
  of: ({ majorMm, triangleHeightMm }) => majorMm - (17 / 12) * triangleHeightMm
})

export interface BasicSizes {
  readonly triangleHeightMm: number
  readonly pitchDiameterMm: number
  readonly minorDiameterMm: number
  readonly rootDiameterMm: number
}

/** Of an ISO metric and of a unified thread: ASME B1.1 has the profile of ISO 68-1. */
export function basicSizes({ majorMm, pitchMm }: { readonly majorMm: number; readonly pitchMm: number }): BasicSizes {
  const height = triangleHeightMm({ pitchMm })
  const x = { majorMm, triangleHeightMm: height }
  return {
    triangleHeightMm: height,
    pitchDiameterMm: pitchDiameterMm(x),
    minorDiameterMm: minorDiameterMm(x),
    rootDiameterMm: rootDiameterMm(x)
  }
}
