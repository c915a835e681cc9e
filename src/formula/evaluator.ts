import { noise } from './climb.ts'
import { type Given, type Plain, plainOf, type Slot } from './given.ts'
import { type Leaf, leavesOf } from './leaves.ts'
import { NoAnswer } from './no-answer.ts'
import { OutsideRange } from './outside-range.ts'
import { silently } from './working.ts'

/** One number for each given of a tree, in slot order. */
export type Values = readonly number[]

/** A calculation as a function of its given numbers alone: the numbers it gives, in a fixed order. */
export interface Evaluator {
  readonly givens: readonly Given[]
  readonly nominal: Values
  readonly leaves: readonly Leaf[]
  readonly at: (values: Values) => Float64Array
}

/** The same point is worked out once, however many results ask for it. A range error leaves with the givens it came from. */
export function evaluatorOf<T, R>(tree: T, calculation: (x: Plain<T>) => R): Evaluator & { readonly centre: R } {
  const { plain, slots } = plainOf(tree)
  const nominal = slots.map(({ given }) => given.value)
  const run = (values: Values): R => {
    for (const [i, { set }] of slots.entries()) set(values[i]!)
    return silently(() => calculation(plain))
  }
  const careful = (values: Values): R => {
    try {
      return run(values)
    } catch (error) {
      if (error instanceof OutsideRange) error.from = blamed(error, slots, values, run)
      throw error
    }
  }
  const centre = careful(nominal)
  const leaves = leavesOf(centre)
  const numbers = (results: R): Float64Array => Float64Array.from(leaves, leaf => numberAt(results, leaf))
  const known = new Map([[String(nominal), numbers(centre)]])
  const at = (values: Values): Float64Array => {
    const key = String(values)
    const found = known.get(key) ?? numbers(careful(values))
    known.set(key, found)
    return found
  }
  return { givens: slots.map(({ given }) => given), nominal, leaves, at, centre }
}

function numberAt(results: unknown, { path }: Leaf): number {
  const value = path.reduce<unknown>((node, key) => (node as Record<string, unknown> | null)?.[key], results)
  if (value === undefined || value === null)
    throw new NoAnswer('a result there is at the numbers given is not there at an end of their bounds', 'narrower bounds')
  // NaN loses every comparison, so a NaN corner would pass unseen.
  if (typeof value !== 'number' || Number.isNaN(value)) throw new Error(`a calculation gave no number for ${path.join('.')}`)
  return value
}

/** Whether a small step of one given moves one leaf at a point. Steps down where a step up leaves a formula's range. */
export function movesLeaf({ at }: Evaluator, leaf: number, values: Values, i: number): boolean {
  const beside = (sign: 1 | -1) => at(values.with(i, nudged(values[i]!, sign)))[leaf]!
  try {
    return change(at(values)[leaf]!, beside(1)) !== 0
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return change(at(values)[leaf]!, beside(-1)) !== 0
  }
}

/** The change from one number to another; nought where it is only rounding. */
export function change(from: number, to: number): number {
  return from !== to && Math.abs(to - from) > noise(from) ? to - from : 0
}

/** A step small beside any bounds, to see whether an input moves something. */
function nudged(value: number, sign: 1 | -1): number {
  return value + sign * 1e-3 * (Math.abs(value) || 1)
}

/** The givens that move the offending number when nudged, strongest first. */
function blamed(error: OutsideRange, slots: readonly Slot[], values: Values, run: (values: Values) => unknown): readonly Given[] {
  const offending = (at: Values): number => {
    try {
      run(at)
    } catch (again) {
      if (again instanceof OutsideRange && again.formula === error.formula && again.input === error.input) return again.value
    }
    return Number.POSITIVE_INFINITY
  }
  return slots
    .map(({ given }, i) => ({ given, move: Math.abs(offending(values.with(i, nudged(values[i]!, 1))) - error.value) }))
    .filter(({ move }) => move > 1e-12 * Math.abs(error.value))
    .sort((a, b) => b.move - a.move)
    .map(({ given }) => given)
}
