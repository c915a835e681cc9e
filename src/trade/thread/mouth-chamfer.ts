import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Countersink of a tapped hole: 90 or 120 degrees, to between one and 1.1 major diameters. */
export const MOUTH_ANGLES_DEG = [90, 120] as const
export const MOUTH_FACTORS = { least: 1, greatest: 1.1 } as const

export type MouthAngleDeg = (typeof MOUTH_ANGLES_DEG)[number]

export const mouthDiameterMm = formula('mouthDiameterMm', {
  says: 'diameter of the countersink at the face',
  symbol: 'Dm',
  equation: 'm·D',
  inputs: { majorMm: ['D', 1, 100], mouthFactor: ['m', 1, 1.1] },
  source: SOURCES['din-76-1-memory'],
  of: ({ majorMm, mouthFactor }) => mouthFactor * majorMm
})

export const mouthDepthMm = formula('mouthDepthMm', {
  says: 'depth of the countersink, from the face to where the thread is full: off the engagement',
  symbol: 'lm',
  equation: '(Dm - D1)/2·cot(α/2)',
  inputs: { mouthDiameterMm: ['Dm', 1, 110], minorMm: ['D1', 0.7, 100], angleDeg: ['α', 60, 150] },
  source: SOURCES.geometry,
  of: ({ mouthDiameterMm, minorMm, angleDeg }) => (mouthDiameterMm - minorMm) / 2 / Math.tan(((angleDeg / 2) * Math.PI) / 180)
})

export const mouthAcrossMm = formula('mouthAcrossMm', {
  says: 'how wide a countersink of this depth is at the face',
  symbol: 'Dm',
  equation: 'D1 + 2·lm·tan(α/2)',
  inputs: { minorMm: ['D1', 0.7, 300], mouthMm: ['lm', 0, 50], angleDeg: ['α', 60, 150] },
  source: SOURCES.geometry,
  of: ({ minorMm, mouthMm, angleDeg }) => minorMm + 2 * mouthMm * Math.tan(((angleDeg / 2) * Math.PI) / 180)
})

/** What is cut where nobody says otherwise. */
export const USUAL_MOUTH_DEG: MouthAngleDeg = 90

export interface MouthChamfer {
  readonly angleDeg: MouthAngleDeg
  readonly leastMm: number
  readonly greatestMm: number
  /** From the face to the first full thread, at the larger countersink. */
  readonly depthMm: number
}

/** The mouth that keeps the first thread from standing up as a burr under the shoulder. */
export function mouthChamfer({
  majorMm,
  minorMm,
  angleDeg = USUAL_MOUTH_DEG
}: {
  readonly majorMm: number
  readonly minorMm: number
  readonly angleDeg?: MouthAngleDeg
}): MouthChamfer {
  const leastMm = mouthDiameterMm({ majorMm, mouthFactor: MOUTH_FACTORS.least })
  const greatestMm = mouthDiameterMm({ majorMm, mouthFactor: MOUTH_FACTORS.greatest })
  return { angleDeg, leastMm, greatestMm, depthMm: mouthDepthMm({ mouthDiameterMm: greatestMm, minorMm, angleDeg }) }
}
