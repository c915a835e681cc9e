import type { Loose } from './climb.ts'
import type { Values } from './values.ts'

/** What random draws inside the bounds gave for one result. */
export interface Seen {
  /** Between these ends lie 95 of 100 draws: an estimate, and no coverage of what was measured. */
  readonly middle: readonly [low: number, high: number]
  readonly least: number
  readonly leastAt: Values
  readonly most: number
  readonly mostAt: Values
}

const OUTSIDE = 0.025
const SEED = 20260101

let wanted = 0

/**
 * Runs `calculation`; every `boundsOf` in it draws so many points besides. Like working, this is asked for around a
 * whole calculation, so that no room has to hand it on. It never makes a bound narrower.
 */
export function withSamples<T>(count: number, calculation: () => T): T {
  const outer = wanted
  wanted = count
  try {
    return calculation()
  } finally {
    wanted = outer
  }
}

/** How many draws were asked for. */
export function drawsWanted(): number {
  return wanted
}

/** Draws each loose input evenly between its ends, all at once; nothing where nobody asked or nothing is loose. */
export function sampled(nominal: Values, loose: readonly Loose[], at: (values: Values) => Values): readonly Seen[] | undefined {
  if (wanted === 0 || loose.length === 0) return undefined
  const random = seeded(SEED)
  const points = Array.from({ length: wanted }, () => {
    const values = [...nominal]
    for (const { given, i } of loose) values[i] = given.low + (given.high - given.low) * random()
    return { values, numbers: at(values) }
  })
  return Array.from(points[0]!.numbers, (_, leaf) => seenOf(points, leaf))
}

interface Point {
  readonly values: Values
  readonly numbers: Values
}

function seenOf(points: readonly Point[], leaf: number): Seen {
  const by = (a: Point, b: Point) => (b.numbers[leaf]! < a.numbers[leaf]! ? b : a)
  const [least, most] = [points.reduce(by), points.reduce((a, b) => (b.numbers[leaf]! > a.numbers[leaf]! ? b : a))]
  const sorted = Float64Array.from(points, ({ numbers }) => numbers[leaf]!).sort()
  return {
    middle: [quantile(sorted, OUTSIDE), quantile(sorted, 1 - OUTSIDE)],
    least: least.numbers[leaf]!,
    leastAt: least.values,
    most: most.numbers[leaf]!,
    mostAt: most.values
  }
}

/** Straight between the two draws beside it. */
function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1)
  const [below, above] = [sorted[Math.floor(place)]!, sorted[Math.ceil(place)]!]
  return below === above ? below : below + (above - below) * (place - Math.floor(place))
}

/** A small generator of even numbers in 0..1, the same row every time (mulberry32, memory). */
function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
