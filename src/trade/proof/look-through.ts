/** A place on a line of logarithms, and how well the readings fit there. */
export interface Place {
  readonly size: number
  readonly logLikelihood: number
}

export interface Ends {
  readonly low: number
  readonly high: number
}

/** How closely the sizes are looked through: at first, for slopes, and where the top is sought. */
export interface Closeness {
  readonly coarseCount: number
  readonly slopesCount: number
  readonly tops: number
  /** Whether the sizes about a top are gone through as well, which only the sum over all sizes needs. */
  readonly around: boolean
}
export const CLOSE: Closeness = { coarseCount: 21, slopesCount: 5, tops: 2, around: true }
/** To see which faults are worth a close look. */
export const FIRST: Closeness = { coarseCount: 13, slopesCount: 3, tops: 1, around: false }
export const ROUGH: Closeness = { coarseCount: 9, slopesCount: 1, tops: 1, around: false }

/** Evenly over the logarithm first, then closely about each top: it may be far narrower than the first steps. Smallest first. */
export function lookedThrough<P extends Place>(at: (log: number) => P, { low, high }: Ends, closeness: Closeness): readonly P[] {
  const { coarseCount, tops, around } = closeness
  const step = (high - low) / (coarseCount - 1)
  const coarse = Array.from({ length: coarseCount }, (_, i) => at(low + i * step))
  const close = topsOf(coarse, tops).flatMap(i => {
    const ends = { low: low + Math.max(0, i - 1) * step, high: low + Math.min(coarseCount - 1, i + 1) * step }
    const tried = climbed(at, ends)
    return around ? [...tried, ...aboutTop(at, best(tried), ends)] : tried
  })
  return [...coarse, ...close].sort((a, b) => a.size - b.size)
}

/** Where neither neighbour fits better, the best first. */
function topsOf(coarse: readonly Place[], most: number): readonly number[] {
  const worth = (i: number) => coarse[i]?.logLikelihood ?? Number.NEGATIVE_INFINITY
  return coarse
    .map((_, i) => i)
    .filter(i => worth(i - 1) <= worth(i) && worth(i + 1) <= worth(i))
    .sort((a, b) => worth(b) - worth(a))
    .slice(0, most)
}

const GOLDEN = (Math.sqrt(5) - 1) / 2
const TURNS = 12

/** Towards the top by golden section: every place tried on the way. */
function climbed<P extends Place>(at: (log: number) => P, { low, high }: Ends): readonly P[] {
  let [from, to] = [low, high]
  let [left, right] = [at(to - GOLDEN * (to - from)), at(from + GOLDEN * (to - from))]
  const tried = [left, right]
  for (let turn = 0; turn < TURNS; turn++) {
    if (left.logLikelihood > right.logLikelihood) {
      to = Math.log(right.size)
      right = left
      left = at(to - GOLDEN * (to - from))
      tried.push(left)
    } else {
      from = Math.log(left.size)
      left = right
      right = at(from + GOLDEN * (to - from))
      tried.push(right)
    }
  }
  return tried
}

/** In widths of the top. */
const ABOUT = [0.4, 0.8, 1.2, 1.7, 2.3, 3, 4, 6]

/** Sizes to either side of the top, as far as the likelihood reaches. */
function aboutTop<P extends Place>(at: (log: number) => P, top: P, { low, high }: Ends): readonly P[] {
  const width = widthAbout(at, top, high - low)
  const middle = Math.log(top.size)
  return ABOUT.flatMap(times => [middle - times * width, middle + times * width])
    .filter(log => log > low && log < high)
    .map(at)
}

/** How far from the top the likelihood falls by half a unit, by its bend there. */
function widthAbout(at: (log: number) => Place, top: Place, most: number): number {
  const middle = Math.log(top.size)
  for (let step = 5e-4; step < most; step *= 4) {
    const fall = top.logLikelihood - Math.max(at(middle - step).logLikelihood, at(middle + step).logLikelihood)
    if (fall > 0.02) return Math.min(most, step / Math.sqrt(2 * fall))
  }
  return most
}

export function best<P extends Place>(places: readonly P[]): P {
  return places.reduce((a, b) => (b.logLikelihood > a.logLikelihood ? b : a))
}
