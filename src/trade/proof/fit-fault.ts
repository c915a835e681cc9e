import type { Fault } from './fault.ts'
import { logSum } from './gaussian.ts'
import { gaussianOf, type Predicted, type Predictor } from './predictor.ts'

/** One size of a fault, and how well the readings fit it. */
export interface FittedSize {
  readonly size: number
  readonly name: string | null
  readonly logLikelihood: number
  /** Log of the share of sizes that it stands for. */
  readonly logShare: number
  readonly predicted: Predicted
}

export interface FittedFault {
  readonly fault: Fault
  /** Every size tried, smallest first. */
  readonly sizes: readonly FittedSize[]
  readonly best: FittedSize
  /** Log of the likelihood over all sizes the fault may have. */
  readonly logEvidence: number
}

/** How closely the sizes are looked through: at first, for slopes, and where the top is sought. */
export interface Closeness {
  readonly coarseCount: number
  readonly slopesCount: number
  readonly tops: number
}
const CLOSE: Closeness = { coarseCount: 21, slopesCount: 5, tops: 2 }
export const ROUGH: Closeness = { coarseCount: 13, slopesCount: 3, tops: 1 }

/** One fault held against the readings: every size it may have, the best of them, and all of them together. */
export function fitFault(predictor: Predictor, fault: Fault, readings: readonly number[], closeness: Closeness = CLOSE): FittedFault {
  const sizes = sized(predictor, fault, readings, closeness)
  const best = sizes.reduce((a, b) => (b.logLikelihood > a.logLikelihood ? b : a))
  return { fault, sizes, best, logEvidence: logSum(sizes.map(({ logLikelihood, logShare }) => logLikelihood + logShare)) }
}

function sized(predictor: Predictor, fault: Fault, readings: readonly number[], closeness: Closeness): readonly FittedSize[] {
  const { sizes } = fault
  const whole = (size: number) => ({ values: predictor.valuesOf(fault, size), slopes: predictor.slopesOf(fault, size) })
  const fitted = (size: number, name: string | null, predicted: Predicted, logShare: number): FittedSize => ({
    size,
    name,
    predicted,
    logShare,
    logLikelihood: gaussianOf(predictor, predicted).logDensity(readings)
  })
  switch (sizes.by) {
    case 'none':
      return [fitted(0, null, whole(0), 0)]
    case 'list':
      return sizes.of.map(({ size, name }) => fitted(size, name, whole(size), -Math.log(sizes.of.length)))
    case 'range': {
      const logs = { low: Math.log(sizes.low), high: Math.log(sizes.high) }
      const slopesAt = between(logs, closeness.slopesCount, log => predictor.slopesOf(fault, Math.exp(log)))
      const at = (log: number) =>
        fitted(Math.exp(log), null, { values: predictor.valuesOf(fault, Math.exp(log)), slopes: slopesAt(log) }, 0)
      return shared(lookedThrough(at, logs, closeness), logs)
    }
  }
}

interface Ends {
  readonly low: number
  readonly high: number
}

/** Slopes hardly bend: worked out at a few sizes, and straight between them. */
function between({ low, high }: Ends, count: number, at: (log: number) => Predicted['slopes']): (log: number) => Predicted['slopes'] {
  const step = (high - low) / (count - 1)
  const nodes = Array.from({ length: count }, (_, i) => at(low + i * step))
  return log => {
    const place = Math.min(count - 1.000001, Math.max(0, (log - low) / step))
    const [i, part] = [Math.floor(place), place % 1]
    return nodes[i]!.map((row, p) => row.map((slope, j) => (1 - part) * slope + part * nodes[i + 1]![p]![j]!))
  }
}

/** Evenly over the logarithm first, then closely about each top: it may be far narrower than the first steps. */
function lookedThrough(at: (log: number) => FittedSize, { low, high }: Ends, { coarseCount, tops }: Closeness): FittedSize[] {
  const step = (high - low) / (coarseCount - 1)
  const coarse = Array.from({ length: coarseCount }, (_, i) => at(low + i * step))
  const peaks = coarse
    .map((one, i) => ({ one, i }))
    .filter(({ one, i }) =>
      [coarse[i - 1], coarse[i + 1]].every(beside => beside === undefined || beside.logLikelihood <= one.logLikelihood)
    )
    .sort((a, b) => b.one.logLikelihood - a.one.logLikelihood)
    .slice(0, tops)
  const close = peaks.flatMap(({ i }) =>
    aboutTop(at, { low: low + Math.max(0, i - 1) * step, high: low + Math.min(coarseCount - 1, i + 1) * step })
  )
  return [...coarse, ...close].sort((a, b) => a.size - b.size)
}

const GOLDEN = (Math.sqrt(5) - 1) / 2
const HALVINGS = 12
const ABOUT = [0.4, 0.8, 1.2, 1.7, 2.3, 3, 4, 6]

/** The top by golden section, and sizes to either side as far as the likelihood reaches. */
function aboutTop(at: (log: number) => FittedSize, { low, high }: Ends): FittedSize[] {
  let [from, to] = [low, high]
  const tried: FittedSize[] = []
  const worth = (log: number) => {
    const one = at(log)
    tried.push(one)
    return one.logLikelihood
  }
  let [left, right] = [to - GOLDEN * (to - from), from + GOLDEN * (to - from)]
  let [worthLeft, worthRight] = [worth(left), worth(right)]
  for (let turn = 0; turn < HALVINGS; turn++) {
    if (worthLeft > worthRight) {
      to = right
      ;[right, worthRight] = [left, worthLeft]
      left = to - GOLDEN * (to - from)
      worthLeft = worth(left)
    } else {
      from = left
      ;[left, worthLeft] = [right, worthRight]
      right = from + GOLDEN * (to - from)
      worthRight = worth(right)
    }
  }
  const top = tried.reduce((a, b) => (b.logLikelihood > a.logLikelihood ? b : a))
  const width = widthAbout(at, top, high - low)
  const middle = Math.log(top.size)
  const beside = ABOUT.flatMap(times => [middle - times * width, middle + times * width]).filter(log => log > low && log < high)
  return [...tried, ...beside.map(at)]
}

/** How far from the top the likelihood falls by half a unit, by its bend there. */
function widthAbout(at: (log: number) => FittedSize, top: FittedSize, most: number): number {
  const middle = Math.log(top.size)
  for (let step = 5e-4; step < most; step *= 4) {
    const fall = top.logLikelihood - Math.max(at(middle - step).logLikelihood, at(middle + step).logLikelihood)
    if (fall > 0.02) return Math.min(most, step / Math.sqrt(2 * fall))
  }
  return most
}

/** Each size stands for the stretch half way to its neighbours. */
function shared(sizes: readonly FittedSize[], { low, high }: Ends): readonly FittedSize[] {
  const logs = sizes.map(({ size }) => Math.log(size))
  return sizes.map((one, i) => {
    const stretch = (logs[i + 1] ?? logs[i]!) - (logs[i - 1] ?? logs[i]!)
    return { ...one, logShare: Math.log(stretch / 2 / (high - low)) }
  })
}

export interface SizeBand {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** The best size, and the ends between which it lies in nineteen of twenty cases. Nothing where the fault has no such size. */
export function sizeBand({ fault, sizes, best, logEvidence }: FittedFault): SizeBand | null {
  if (fault.sizes.by !== 'range') return null
  let sum = 0
  const upTo = sizes.map(({ size, logLikelihood, logShare }) => {
    sum += Math.exp(logLikelihood + logShare - logEvidence)
    return { size, sum }
  })
  const at = (share: number) => (upTo.find(one => one.sum >= share) ?? upTo.at(-1)!).size
  return { value: best.size, low: Math.min(best.size, at(0.025)), high: Math.max(best.size, at(0.975)) }
}
