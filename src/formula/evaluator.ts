import { noise } from './climb.ts'
import { type Given, nominalPlain, type Plain, plainOf, type Slot } from './given.ts'
import { countOf, numbersOf, shapeOf } from './leaves.ts'
import { NoAnswer } from './no-answer.ts'
import { OutsideRange } from './outside-range.ts'
import { type Values, withAt } from './values.ts'
import { silently } from './working.ts'

/** A calculation as a function of its given numbers alone: the numbers it gives, in a fixed order. */
export interface Evaluator {
  readonly givens: readonly Given[]
  readonly nominal: Values
  /** What it gives at the nominal. */
  readonly base: Values
  readonly at: (values: Values) => Values
}

/** A calculation as it runs on a tree: with other numbers in place of the givens, each time only those set anew that differ. */
export interface Runner<R> {
  readonly givens: readonly Given[]
  readonly nominal: Values
  readonly run: (values: Values) => R
}

/** A range error leaves with the givens it came from. */
export function runnerOf<T, R>(tree: T, calculation: (x: Plain<T>) => R): Runner<R> {
  const { plain, slots } = plainOf(tree)
  const nominal = slots.map(({ given }) => given.value)
  const current = [...nominal]
  const once = () => calculation(plain)
  const bare = (values: Values): R => {
    for (let i = 0; i < slots.length; i++) {
      if (current[i] === values[i]) continue
      current[i] = values[i]!
      slots[i]!.set(values[i]!)
    }
    return silently(once)
  }
  const run = (values: Values): R => {
    try {
      return bare(values)
    } catch (error) {
      if (error instanceof OutsideRange) error.from = blamed(error, slots, values, bare)
      throw error
    }
  }
  return { givens: slots.map(({ given }) => given), nominal, run }
}

/** The calculation once, at the nominal. */
export function ranAt<T, R>(tree: T, calculation: (x: Plain<T>) => R): R {
  try {
    const plain = nominalPlain(tree)
    return silently(() => calculation(plain))
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    const { nominal, run } = runnerOf(tree, calculation)
    return run(nominal)
  }
}

export function evaluatorOf<R>({ givens, nominal, run }: Runner<R>): Evaluator & { readonly centre: R } {
  const centre = run(nominal)
  const shape = shapeOf(centre)
  const count = countOf(shape)
  const at = (values: Values): Values => numbersOf(shape, count, run(values))
  return { givens, nominal, base: numbersOf(shape, count, centre), at, centre }
}

/** Remembers what it gave: the ways along inputs from several corners meet. Only the inputs at these places ever move. */
export function recallingAt({ at }: Evaluator, moving: readonly number[]): Evaluator['at'] {
  const known = new Map<number, Known>()
  return values => {
    const sum = sumOf(values, moving)
    const before = known.get(sum)
    for (let one = before; one !== undefined; one = one.next) if (isAt(one, values, moving)) return one.numbers
    const numbers = at(values)
    known.set(sum, { values, numbers, next: before })
    return numbers
  }
}

/** What was given at one place, and the next place with the same sum. */
interface Known {
  readonly values: Values
  readonly numbers: Values
  readonly next: Known | undefined
}

function sumOf(values: Values, moving: readonly number[]): number {
  let sum = 0
  for (let k = 0; k < moving.length; k++) sum += values[moving[k]!]! * (k + 1)
  return sum
}

function isAt({ values }: Known, asked: Values, moving: readonly number[]): boolean {
  for (let k = 0; k < moving.length; k++) if (values[moving[k]!] !== asked[moving[k]!]) return false
  return true
}

/** All numbers with one given a small step aside. Steps down where a step up leaves the range of a formula, or the last row of a table. */
export function nudgedAt({ at }: Pick<Evaluator, 'at'>, values: Values, i: number): Values {
  const beside = (sign: 1 | -1) => at(withAt(values, i, nudged(values[i]!, sign)))
  try {
    return beside(1)
  } catch (error) {
    if (!(error instanceof OutsideRange || error instanceof NoAnswer)) throw error
    return beside(-1)
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
    .map(({ given }, i) => ({ given, move: Math.abs(offending(withAt(values, i, nudged(values[i]!, 1))) - error.value) }))
    .filter(({ move }) => move > 1e-12 * Math.abs(error.value))
    .sort((a, b) => b.move - a.move)
    .map(({ given }) => given)
}
