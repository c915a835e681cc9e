import { type Given, plainOf } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { type Fault, unchanged } from './fault.ts'
import { dot, Gaussian } from './gaussian.ts'
import { type Meter, meterError } from './meter.ts'
import { faulted } from './opening-fuse.ts'
import type { Probe, Tested } from './probe.ts'
import { mostShown } from './reading-unit.ts'
import { deviationRatio } from './spread.ts'
import type { Told } from './told-bounds.ts'

/** A test point with the meter that is put there. */
export interface TestPoint extends Probe {
  readonly meter: Meter
}

/** What the readings should be with one fault, and what each uncertain input does to them: a row an input, for one standard deviation. */
export interface Predicted {
  readonly values: readonly number[]
  readonly slopes: readonly (readonly number[])[]
}

export interface Predictor {
  readonly points: readonly TestPoint[]
  /** Of what the sources give. */
  readonly told: readonly Told[]
  /** With every input where it is taken to be: in the middle of its bounds, or where it was measured. */
  readonly valuesOf: (fault: Fault, size: number) => readonly number[]
  readonly slopesOf: (fault: Fault, size: number) => Predicted['slopes']
  /** Where the readings are expected once the middle is moved to where it was before anything was measured. */
  readonly settled: (predicted: Predicted) => readonly number[]
  /** The same with every input where the readings put it, were `predicted` what is behind them: a drop is a product of two inputs, and bends. */
  readonly drawnTo: (predicted: Predicted, readings: readonly number[]) => Predictor
}

/** A step small beside the bounds, large beside rounding. */
const STEP = 0.05

/**
 * Works out readings under any fault. `measured`: inputs whose middle is better known than by their bounds;
 * slopes are taken there, and what was expected before is kept.
 */
export function predictorOf(tested: Tested, points: readonly TestPoint[], measured: ReadonlyMap<Given, number> = new Map()): Predictor {
  const { plain, slots } = plainOf(tested)
  const inputs = slots.map(({ given, set }) => inputOf(given, set, measured)).filter(({ deviation }) => deviation > 0)
  for (const { set, middle } of inputs) set(middle)
  const valuesOf: Of<Predicted['values']> = (fault, size) => {
    const circuit = faulted(fault, plain, size)
    return points.map(point => circuit.shown(point))
  }
  const slopesOf: Of<Predicted['slopes']> = (fault, size) => {
    const before = valuesOf(fault, size)
    return inputs.map(({ set, middle, deviation }) => {
      set(middle + STEP * deviation)
      const after = valuesOf(fault, size)
      set(middle)
      return after.map((value, j) => (value - before[j]!) / STEP)
    })
  }
  // A fault of the meter leaves the circuit as it is, and most faults looked for are such.
  const [values, slopes] = [onceUnchanged(valuesOf), onceUnchanged(slopesOf)]
  const settled = ({ values, slopes }: Predicted) =>
    values.map((value, j) => inputs.reduce((sum, { shift, deviation }, p) => sum + (shift / deviation) * slopes[p]![j]!, value))
  const sources = new Set(tested.network.elements.flatMap(element => (element.kind === 'source' ? [element.sourceV] : [])))
  return {
    points,
    told: inputs.flatMap((input, row) => (sources.has(input.given) ? [toldOf(input, row)] : [])),
    valuesOf: (fault, size) => shown(fault, size, values(fault, size)),
    slopesOf: (fault, size) => slopes(fault, size).map(row => shown(fault, size, row)),
    settled,
    drawnTo: (predicted, readings) => {
      const mean = settled(predicted)
      const pull = gaussianOf({ points, settled }, predicted).solve(readings.map((reading, j) => reading - mean[j]!))
      return predictorOf(tested, points, new Map(inputs.map((input, p) => [input.given, pulled(input, dot(predicted.slopes[p]!, pull))])))
    }
  }
}

interface Input {
  readonly given: Given
  readonly set: (value: number) => void
  readonly centre: number
  readonly deviation: number
  /** Where slopes are taken. */
  readonly middle: number
  readonly shift: number
}

/** Anything between the bounds is as likely as anything else, wherever the number that was given stands between them. */
function inputOf(given: Given, set: Input['set'], measured: ReadonlyMap<Given, number>): Input {
  const { low, high } = given
  const centre = (low + high) / 2
  const middle = measured.get(given) ?? centre
  return { given, set, centre, middle, shift: centre - middle, deviation: deviationRatio({ halfWidthRatio: (high - low) / 2 }) }
}

/** A job tells a voltage to a tenth of a volt in twelve: half of that it may be off. */
const ROUNDING_SHARE = 0.05 / 12

function toldOf({ centre, deviation }: Input, row: number): Told {
  return { row, roundingDeviations: (ROUNDING_SHARE * Math.abs(centre)) / deviation }
}

/** No input is taken to lie outside its bounds. */
function pulled({ given: { low, high }, centre, deviation }: Input, deviations: number): number {
  return Math.min(high, Math.max(low, centre + deviations * deviation))
}

type Of<T> = (fault: Fault, size: number) => T

function onceUnchanged<T>(of: Of<T>): Of<T> {
  let known: T | undefined
  return (fault, size) => {
    if (fault.changes !== unchanged) return silently(() => of(fault, size))
    known ??= silently(() => of(fault, size))
    return known
  }
}

function shown({ shows }: Fault, size: number, values: readonly number[]): readonly number[] {
  return shows === undefined ? values : shows(values, size)
}

/** Variance of what a meter shows; a misread of a thousand times is shown on its highest range. A reading is never sharper than rounding. */
export function meterVariance({ takes, meter }: TestPoint, value: number): number {
  const shown = Math.min(Math.abs(value), mostShown(takes))
  return (
    Math.max(
      1e-9,
      silently(() => deviationRatio({ halfWidthRatio: meterError(takes, meter, shown) }))
    ) ** 2
  )
}

/** The readings as a Gaussian: uncertain inputs move them together, the meter each for itself. */
export function gaussianOf({ points, settled }: Pick<Predictor, 'points' | 'settled'>, predicted: Predicted): Gaussian {
  const covariance = points.map((point, i) =>
    points.map(
      (_, j) =>
        predicted.slopes.reduce((sum, row) => sum + row[i]! * row[j]!, 0) + (i === j ? meterVariance(point, predicted.values[i]!) : 0)
    )
  )
  return new Gaussian(settled(predicted), covariance)
}
