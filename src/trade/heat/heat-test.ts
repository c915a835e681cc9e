import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { LuDecomposition, Matrix } from 'ml-matrix'
import { fact } from '../../formula/formula.ts'
import { Given } from '../../formula/given.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import type { Squares } from './heat-test-doubts.ts'
import { firstGuess } from './heat-test-guess.ts'
import { doubtOf } from './heat-test-lag.ts'
import { type Parameters, type Reading, riseK, slopesOf } from './heat-test-model.ts'
import { noCurve, notWarming, spoiled, tooLate, tooShort } from './heat-test-no-answer.ts'

/** A run of some ten minutes with the heater on: temperatures of the block from switch-on. */
export interface HeatTest {
  readonly powerW: Given
  readonly airC: Given
  readonly readings: readonly { readonly timeS: number; readonly blockC: number }[]
  /** How far a single reading may be off, either way. */
  readonly readingK: number
  /** Where the readings stand. */
  readonly at?: Given['at']
}

export const capacityJPerK = fact('capacityJPerK', {
  says: 'heat capacity from the heat test',
  symbol: 'C',
  source: SOURCES['least-squares']
})
export const lossWPerK = fact('lossWPerK', { says: 'loss from the heat test', symbol: 'G', source: SOURCES['least-squares'] })

/** Three figures are fitted: two readings more tell how well. */
const LEAST_READINGS = 5
const MOST_READINGS = 10_000

/**
 * Heat capacity and loss of one node, by least squares, with bounds to go on with: twice the standard error of each,
 * widened by the bounds of power and air. The errors of the two go together, so bounds of what follows from both come out wide.
 */
export function fitHeatTest({ powerW, airC, readings, readingK, at = ['heat-test'] }: HeatTest) {
  if (!(readings.length >= LEAST_READINGS && readings.length <= MOST_READINGS))
    throw new OutsideRange('capacityJPerK', 'readingCount', readings.length, LEAST_READINGS, MOST_READINGS)
  const above = (air: number) => readings.map(({ timeS, blockC }) => ({ timeS, riseK: blockC - air }))
  const fits = [airC.value, airC.low, airC.high].map(air => fitted(above(air), readingK))
  const spreads = { capacity: fits.map(fit => fit.capacity), loss: fits.map(fit => fit.loss) }
  const doubt =
    fits[0]!.spread === null
      ? undefined
      : doubtOf({ ...fits[0]!, spread: fits[0]!.spread, airC: airC.value, readingK, curveThrough }, airC.high - airC.value)
  const why = [powerW.assumed, doubt?.says].filter(one => one !== undefined)
  const as = { at, assumed: why.length === 0 ? undefined : why.join('; ') }
  const [capacity, loss] = [perWatt(spreads.capacity, powerW, as), perWatt(spreads.loss, powerW, as)]
  if (!(capacity.low > 0 && loss.low > 0)) throw doubt !== undefined ? spoiled(doubt) : loss.low > 0 ? tooLate() : tooShort()
  const how = () => `${readings.length} readings, ${fits[0]!.residualK.toPrecision(2)} K left over`
  recordStep(capacityJPerK, capacity.value, how)
  recordStep(lossWPerK, loss.value, how)
  const { startRiseK, residualK } = fits[0]!
  return { capacityJPerK: capacity, lossWPerK: loss, startC: airC.value + startRiseK, residualK, remedy: doubt?.change ?? null }
}

interface Spread {
  readonly value: number
  readonly error: number
}

/** Times the power, at the worst ends of fits and power. */
function perWatt(spreads: readonly Spread[], powerW: Given, as: Pick<Given, 'at' | 'assumed'>): Given {
  const low = powerW.low * Math.min(...spreads.map(s => s.value - 2 * s.error))
  const high = powerW.high * Math.max(...spreads.map(s => s.value + 2 * s.error))
  return new Given(powerW.value * spreads[0]!.value, { low, high, ...as })
}

function fitted(unsorted: readonly Reading[], readingK: number) {
  const readings = unsorted.toSorted((a, b) => a.timeS - b.timeS)
  const [first, last] = [readings[0]!, readings.at(-1)!]
  if (!(last.riseK > first.riseK && last.timeS > first.timeS)) throw notWarming()
  const parameters = leastSquares(readings)
  if (parameters === null) throw noCurve()
  const [logCapacity, logLoss, startRiseK] = parameters
  const squares = readings.reduce((sum, r) => sum + (r.riseK - riseK(parameters, r.timeS)) ** 2, 0)
  const residualK = Math.sqrt(squares / (readings.length - 3))
  const spread = spreadOf(parameters, readings)
  const [capacityError, lossError] = relativeErrors(spread, Math.max(residualK, readingK / Math.sqrt(3)))
  const [capacity, loss] = [Math.exp(logCapacity), Math.exp(logLoss)]
  return {
    capacity: { value: capacity, error: capacity * capacityError },
    loss: { value: loss, error: loss * lossError },
    startRiseK,
    residualK,
    parameters,
    readings,
    spread
  }
}

/** Null where there is nowhere to begin, or the search runs away: its library then throws. */
function leastSquares(readings: readonly Reading[]): Parameters | null {
  try {
    return searched(readings)
  } catch {
    return null
  }
}

function searched(readings: readonly Reading[]): Parameters | null {
  const guess = firstGuess(readings)
  if (guess === null) return null
  const data = { x: readings.map(r => r.timeS), y: readings.map(r => r.riseK) }
  const { parameterValues } = levenbergMarquardt(data, p => timeS => riseK(asParameters(p), timeS), {
    initialValues: [...guess],
    jacobianFunction: p => timeS => slopesOf(asParameters(p), timeS),
    errorTolerance: 1e-20,
    maxIterations: 200
  })
  return asParameters(parameterValues)
}

function curveThrough(readings: readonly Reading[]) {
  const parameters = leastSquares(readings)
  return parameters === null ? null : { parameters, spread: spreadOf(parameters, readings) }
}

function asParameters([logCapacity = 0, logLoss = 0, startRiseK = 0]: readonly number[]): Parameters {
  return [logCapacity, logLoss, startRiseK]
}

/** Standard errors of the logarithms of capacity and loss, from the slopes at the fit. Infinite where the readings do not tell them apart. */
function relativeErrors(spread: Squares | null, errorK: number): [capacity: number, loss: number] {
  if (spread === null) return [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  return [errorK * Math.sqrt(spread[0][0]), errorK * Math.sqrt(spread[1][1])]
}

/** The inverse of the normal equations, where they have one. */
function spreadOf(parameters: Parameters, readings: readonly Reading[]): Squares | null {
  const slopes = new Matrix(readings.map(({ timeS }) => slopesOf(parameters, timeS)))
  const normal = new LuDecomposition(slopes.transpose().mmul(slopes))
  return normal.isSingular() ? null : (normal.solve(Matrix.eye(3)).to2DArray() as unknown as Squares)
}
