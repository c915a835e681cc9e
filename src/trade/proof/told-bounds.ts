import type { FaultKind } from './fault.ts'
import { dot, type Gaussian } from './gaussian.ts'
import { gaussianOf, type Predicted, type Predictor } from './predictor.ts'
import { deviationRatio } from './spread.ts'

/** The least and the greatest that a source may give, as the job tells them: a row of the slopes. */
export interface Told {
  readonly row: number
  /** How far off they are told, in standard deviations of what lies between them. */
  readonly roundingDeviations: number
}

/** Half the width of bounds, in standard deviations of what lies between them. */
const EDGE = 1 / deviationRatio({ halfWidthRatio: 1 })

/**
 * A source that is off beside another fault is no less likely than this, in logarithms: three in a hundred are off, and one in a
 * hundred of those gives what it is found to give. Common practice, no published source.
 */
const MOST_AGAINST = -Math.log(0.03 * 0.01)

/**
 * Log of how likely the readings are. A bell curve reaches far beyond its bounds: a source told to lie between two does not, and what
 * lies far beyond is not in order. Beside another fault it speaks no more against one than against another.
 */
export function logLikelihoodOf(
  predictor: Predictor,
  predicted: Predicted,
  readings: readonly number[],
  kind: FaultKind | 'healthy'
): number {
  const gaussian = gaussianOf(predictor, predicted)
  const against = 0.5 * beyondTold(predictor, predicted, gaussian, readings)
  return gaussian.logDensity(readings) - (kind === 'healthy' ? against : Math.min(against, MOST_AGAINST))
}

/** How far off the readings lie, in standard deviations squared. */
export function farOff(predictor: Predictor, predicted: Predicted, readings: readonly number[]): number {
  const gaussian = gaussianOf(predictor, predicted)
  return gaussian.distance(readings) + beyondTold(predictor, predicted, gaussian, readings)
}

/** How far beyond its bounds the readings put each source, against what they and the rounding of the bounds leave open: squared, summed. */
function beyondTold({ told }: Predictor, { slopes }: Predicted, gaussian: Gaussian, readings: readonly number[]): number {
  const pull = gaussian.solve(readings.map((reading, j) => reading - gaussian.mean[j]!))
  return told.reduce((sum, { row, roundingDeviations }) => {
    const beyond = Math.abs(dot(slopes[row]!, pull)) - EDGE
    if (beyond <= 0) return sum
    const left = 1 - dot(slopes[row]!, gaussian.solve(slopes[row]!))
    return sum + beyond ** 2 / (Math.max(0, left) + roundingDeviations ** 2)
  }, 0)
}
