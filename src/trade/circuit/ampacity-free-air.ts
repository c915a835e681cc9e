import { formula } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { riseK, type Surroundings } from './ampacity-ambient.ts'

interface Anchor {
  readonly awg: number
  readonly anchorA: number
  readonly anchorRiseK: number
  readonly source: Source
}

/** The points known of the aircraft curves for one wire in free air. The curves themselves are drawings without a formula. */
export const FREE_AIR_ANCHORS: readonly Anchor[] = [
  { awg: 14, anchorA: 47, anchorRiseK: 150, source: SOURCES['ac-wire-example'] },
  { awg: 20, anchorA: 21.5, anchorRiseK: 140, source: SOURCES['ac-harness-example'] },
  { awg: 22, anchorA: 16.2, anchorRiseK: 140, source: SOURCES['ac-harness-example'] }
]

/** The points known of the aircraft curves for bundles. */
export const BUNDLE_ANCHORS = [
  { wiresCount: 8, loadedPercent: 60, factor: 0.6, source: SOURCES['ac-wire-example'] },
  { wiresCount: 35, loadedPercent: 20, factor: 0.52, source: SOURCES['ac-harness-example'] }
] as const

export const freeAirA = formula('freeAirA', {
  says: 'current of one wire in free air, from a known point of the same size',
  symbol: 'I',
  equation: 'I0·√(r/r0)',
  inputs: { anchorA: ['I0', 0.1, 1000], riseK: ['r', 1, 300], anchorRiseK: ['r0', 1, 300] },
  source: SOURCES.practice,
  of: ({ anchorA, riseK, anchorRiseK }) => anchorA * Math.sqrt(riseK / anchorRiseK)
})

export const bundledA = formula('bundledA', {
  says: 'current of one wire of a bundle at altitude, from its current in free air',
  symbol: 'Imax',
  equation: 'I·fh·fB',
  inputs: { freeAirA: ['I', 0.1, 1000], altitudeFactor: ['fh', 0.1, 1], bundleFactor: ['fB', 0.1, 1] },
  source: SOURCES['ac-wire-example'],
  of: ({ freeAirA, altitudeFactor, bundleFactor }) => freeAirA * altitudeFactor * bundleFactor
})

/** One wire in free air at its own rise; null where no point of the curve of its size is known. */
export function freeAirOf(awg: number, { insulationC, ambientC }: Surroundings): number | null {
  const anchor = FREE_AIR_ANCHORS.find(anchor => anchor.awg === awg)
  if (anchor === undefined) return null
  return freeAirA({ anchorA: anchor.anchorA, anchorRiseK: anchor.anchorRiseK, riseK: riseK({ insulationC, ambientC }) })
}
