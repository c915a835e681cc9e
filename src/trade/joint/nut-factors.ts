import { SOURCES, type Source, type SourceId } from '../../formula/source.ts'

export interface NutFactorOf {
  readonly threads: string
  /** Halfway where the source gives a range. */
  readonly nutFactor: number
  readonly leastFactor: number
  readonly greatestFactor: number
  readonly source: Source
}

/** Nut factors by the state of the threads. A printed mean without a range has no scatter of its own here: it still scatters. */
export const NUT_FACTORS: readonly NutFactorOf[] = (
  [
    ['non-plated, black finish', 0.3, 0.3, 'shigley-8-15'],
    ['zinc plated', 0.2, 0.2, 'shigley-8-15'],
    ['lubricated', 0.18, 0.18, 'shigley-8-15'],
    ['cadmium plated', 0.16, 0.16, 'shigley-8-15'],
    ['with anti-seize compound (a named brand)', 0.12, 0.12, 'shigley-8-15'],
    ['with low-friction nuts (a named brand)', 0.09, 0.09, 'shigley-8-15'],
    ['dry steel on dry steel', 0.18, 0.27, 'nut-factor-ranges'],
    ['machine oil on steel', 0.1, 0.26, 'nut-factor-ranges'],
    ['cadmium on steel', 0.15, 0.19, 'nut-factor-ranges'],
    ['phosphate and oil on steel', 0.15, 0.22, 'nut-factor-ranges'],
    ['zinc on steel', 0.17, 0.35, 'nut-factor-ranges'],
    ['stainless on stainless, dry', 0.3, 0.5, 'nut-factor-ranges'],
    ['zinc-flake coated steel', 0.16, 0.32, 'nut-factor-ranges'],
    ['measured mean K, many lubricants', 0.086, 0.52, 'nut-factor-means'],
    ['common default when nothing is known', 0.2, 0.2, 'practice']
  ] satisfies [string, number, number, SourceId][]
).map(([threads, leastFactor, greatestFactor, id]) => ({
  threads,
  nutFactor: (leastFactor + greatestFactor) / 2,
  leastFactor,
  greatestFactor,
  source: SOURCES[id]
}))

/** The row that stands for what is on the threads; none was found for thermal compound, sealant and locking compound. */
const USUAL: { readonly [threadsWith: string]: string } = {
  nothing: 'dry steel on dry steel',
  oil: 'machine oil on steel',
  'anti-seize': 'with anti-seize compound (a named brand)'
}

export function usualNutFactor(threadsWith: string): NutFactorOf | null {
  return NUT_FACTORS.find(({ threads }) => threads === USUAL[threadsWith]) ?? null
}
