import { unifiedThreads } from './unified-series.ts'

/** Shop drawings round a size to three decimals of an inch: `.312-18`. */
const NEAR_MM = 0.0006 * 25.4

/** Every size of the series, smallest first. */
export const UNIFIED_SIZES: readonly string[] = [...new Set(unifiedThreads().map(({ size }) => size))]

/** The sizes that a text may mean: `1` is one inch and, with a fine pitch, number 1. */
export function sizesNamed(text: string): readonly string[] {
  const bare = text.replace(/^0*(?=\d)/, '')
  const number = `#${bare.replace('#', '')}`
  return UNIFIED_SIZES.filter(size => size === number || Math.abs(sizeMm(size) - inchesOf(bare) * 25.4) < NEAR_MM)
}

/** The size nearest to one that is in no series; none to a number sign, which is no length. */
export function nearestSize(text: string): string | undefined {
  const wantedMm = inchesOf(text) * 25.4
  const off = (size: string) => Math.abs(sizeMm(size) - wantedMm)
  return Number.isFinite(wantedMm) ? UNIFIED_SIZES.reduce((a, b) => (off(b) < off(a) ? b : a)) : undefined
}

function sizeMm(size: string): number {
  return unifiedThreads().find(each => each.size === size)!.majorMm
}

/** `3/8`, `1-1/8`, `.375`, `1` in inches. */
function inchesOf(text: string): number {
  const [, whole, over, under] = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/.exec(text) ?? []
  return under === undefined ? Number(text) : Number(whole ?? 0) + Number(over) / Number(under)
}
