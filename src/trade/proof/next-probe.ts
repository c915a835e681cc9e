import type { RankedFault } from './diagnosis.ts'
import type { Fault } from './fault.ts'
import { dot } from './gaussian.ts'
import { gaussianOf, meterVariance, type Predictor, type TestPoint } from './predictor.ts'

export interface ProbeGain {
  readonly point: TestPoint
  /** How much a reading there is expected to tell between the faults. */
  readonly gainBits: number
  /** What each fault would show there, in the order of the faults asked about. */
  readonly wouldShow: readonly { readonly fault: Fault; readonly value: number }[]
}

/** Less likely than this a fault settles nothing. */
const LEAST_RATIO = 1e-3
/** So many sizes stand for all that a fault may still have. */
const SIZES = 3

/** One way the circuit may be, with what a meter at each point would show. */
interface Way {
  readonly of: number
  readonly weight: number
  readonly shows: readonly { readonly mean: number; readonly variance: number }[]
}

/**
 * Every point ranked by what a reading there would tell.
 * `over` predicts the readings that were taken and, behind them, the points asked about.
 */
export function probeGains(over: Predictor, faults: readonly RankedFault[], readings: readonly number[]): readonly ProbeGain[] {
  const likely = faults.filter(({ probabilityRatio }) => probabilityRatio >= LEAST_RATIO)
  const sum = likely.reduce((total, { probabilityRatio }) => total + probabilityRatio, 0)
  const ways = likely.flatMap((one, of) => waysOf(over, one, of, one.probabilityRatio / sum, readings))
  const asked = over.points.slice(readings.length)
  return asked
    .map((point, i) => ({
      point,
      gainBits: gainBits(ways, i),
      wouldShow: likely.map(({ fault }, of) => ({
        fault,
        value: ways.filter(way => way.of === of).sort((a, b) => b.weight - a.weight)[0]!.shows[i]!.mean
      }))
    }))
    .sort((a, b) => b.gainBits - a.gainBits)
}

/** The likely sizes of one fault, each with its share. */
function waysOf(over: Predictor, { fitted }: RankedFault, of: number, ratio: number, readings: readonly number[]): readonly Way[] {
  const { fault, sizes, logEvidence } = fitted
  const shares = sizes.map(one => ({ size: one.size, share: Math.exp(one.logLikelihood + one.logShare - logEvidence) }))
  return quantiles(shares).map(({ size, share }) => ({ of, weight: ratio * share, shows: shownAt(over, fault, size, readings) }))
}

interface SizeShare {
  readonly size: number
  readonly share: number
}

/** Sizes in the middle of equal parts of what is likely; a few sizes are all taken. */
function quantiles(shares: readonly SizeShare[]): readonly SizeShare[] {
  const kept = shares.filter(({ share }) => share > 1e-4)
  if (kept.length <= SIZES) return kept
  let reached = 0
  const upTo = kept.map(({ size, share }) => {
    reached += share
    return { size, reached }
  })
  return Array.from({ length: SIZES }, (_, i) => {
    const middle = ((i + 0.5) / SIZES) * reached
    return { size: upTo.find(one => one.reached >= middle)!.size, share: 1 / SIZES }
  })
}

/** Where the readings already taken have settled the uncertain inputs, what is left of them at each further point. */
function shownAt(over: Predictor, fault: Fault, size: number, readings: readonly number[]): Way['shows'] {
  const whole = { values: over.valuesOf(fault, size), slopes: over.slopesOf(fault, size) }
  const taken = readings.length
  const mean = over.settled(whole)
  const part = { points: over.points.slice(0, taken), settled: () => mean.slice(0, taken) }
  const known = gaussianOf(part, whole)
  const off = readings.map((reading, i) => reading - mean[i]!)
  const pull = known.solve(off)
  return over.points.slice(taken).map((point, k) => {
    const j = taken + k
    const together = readings.map((_, i) => whole.slopes.reduce((sum, row) => sum + row[i]! * row[j]!, 0))
    const own = whole.slopes.reduce((sum, row) => sum + row[j]! ** 2, 0)
    return {
      mean: mean[j]! + dot(together, pull),
      variance: Math.max(0, own - dot(together, known.solve(together))) + meterVariance(point, whole.values[j]!)
    }
  })
}

/** Steps of a bell curve, and how much of it lies about each. */
const STEPS = Array.from({ length: 17 }, (_, i) => (i - 8) * 0.4)
const PARTS = (() => {
  const heights = STEPS.map(z => Math.exp(-0.5 * z * z))
  const sum = heights.reduce((a, b) => a + b, 0)
  return heights.map(height => height / sum)
})()

/** What a reading is expected to tell of which fault it is: mutual information. */
function gainBits(ways: readonly Way[], point: number): number {
  const count = 1 + Math.max(...ways.map(({ of }) => of))
  const ratios = Array.from({ length: count }, (_, of) => ways.reduce((sum, way) => sum + (way.of === of ? way.weight : 0), 0))
  let gain = 0
  for (const way of ways) {
    const { mean, variance } = way.shows[point]!
    for (const [i, z] of STEPS.entries()) {
      const densities = densitiesAt(ways, point, mean + z * Math.sqrt(variance), count)
      const all = densities.reduce((a, b) => a + b, 0)
      gain += way.weight * PARTS[i]! * Math.log2(densities[way.of]! / ratios[way.of]! / all)
    }
  }
  return Math.max(0, gain)
}

/** How likely each fault makes one reading, times how likely it is itself. */
function densitiesAt(ways: readonly Way[], point: number, shown: number, count: number): readonly number[] {
  const sums = new Array<number>(count).fill(0)
  for (const { of, weight, shows } of ways) {
    const { mean, variance } = shows[point]!
    sums[of]! += (weight * Math.exp((-0.5 * (shown - mean) ** 2) / variance)) / Math.sqrt(variance)
  }
  return sums
}
