import type { Fault } from './fault.ts'
import { logSum } from './gaussian.ts'
import { best, CLOSE, type Closeness, type Ends, lookedThrough } from './look-through.ts'
import type { Predicted, Predictor } from './predictor.ts'
import { logLikelihoodOf } from './told-bounds.ts'

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
  /** What it was predicted with. */
  readonly predictor: Predictor
  /** Every size tried, smallest first. */
  readonly sizes: readonly FittedSize[]
  readonly best: FittedSize
  /** Log of the likelihood over all sizes the fault may have. */
  readonly logEvidence: number
}

/** One fault held against the readings: every size it may have, the best of them, and all of them together. */
export function fitFault(predictor: Predictor, fault: Fault, readings: readonly number[], closeness: Closeness = CLOSE): FittedFault {
  const sizes = sized(predictor, fault, readings, closeness)
  return {
    fault,
    predictor,
    sizes,
    best: best(sizes),
    logEvidence: logSum(sizes.map(({ logLikelihood, logShare }) => logLikelihood + logShare))
  }
}

function sized(predictor: Predictor, fault: Fault, readings: readonly number[], closeness: Closeness): readonly FittedSize[] {
  const { sizes } = fault
  const fitted = (size: number, slopes = predictor.slopesOf(fault, size)) => {
    const predicted = { values: predictor.valuesOf(fault, size), slopes }
    return { size, name: null, logShare: 0, predicted, logLikelihood: logLikelihoodOf(predictor, predicted, readings, fault.kind) }
  }
  switch (sizes.by) {
    case 'none':
      return [fitted(0)]
    case 'list':
      return sizes.of.map(({ size, name }) => ({ ...fitted(size), name, logShare: -Math.log(sizes.of.length) }))
    case 'range': {
      const logs = { low: Math.log(sizes.low), high: Math.log(sizes.high) }
      const slopesAt = slopesAlong(logs, closeness.slopesCount, log => predictor.slopesOf(fault, Math.exp(log)))
      return shared(
        lookedThrough(log => fitted(Math.exp(log), slopesAt(log)), logs, closeness),
        logs
      )
    }
  }
}

/** Slopes hardly bend: worked out at a few sizes, and straight between them. */
function slopesAlong({ low, high }: Ends, count: number, at: (log: number) => Predicted['slopes']): (log: number) => Predicted['slopes'] {
  if (count === 1) {
    const slopes = at((low + high) / 2)
    return () => slopes
  }
  const step = (high - low) / (count - 1)
  const nodes = Array.from({ length: count }, (_, i) => at(low + i * step))
  return log => {
    const place = Math.min(count - 1.000001, Math.max(0, (log - low) / step))
    const [i, part] = [Math.floor(place), place % 1]
    return nodes[i]!.map((row, p) => row.map((slope, j) => (1 - part) * slope + part * nodes[i + 1]![p]![j]!))
  }
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
export function sizeBand({ fault, sizes, best: { size: value }, logEvidence }: FittedFault): SizeBand | null {
  if (fault.sizes.by !== 'range') return null
  let sum = 0
  const upTo = sizes.map(({ size, logLikelihood, logShare }) => {
    sum += Math.exp(logLikelihood + logShare - logEvidence)
    return { size, sum }
  })
  const at = (share: number) => (upTo.find(one => one.sum >= share) ?? upTo.at(-1)!).size
  return { value, low: Math.min(value, at(0.025)), high: Math.max(value, at(0.975)) }
}
