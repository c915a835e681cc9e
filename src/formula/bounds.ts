import { climb, type Loose } from './climb.ts'
import { change, type Evaluator, evaluatorOf, movesLeaf, type Values } from './evaluator.ts'
import type { Given, Plain } from './given.ts'
import { withLeaves } from './leaves.ts'

export interface Bounded {
  readonly value: number
  /** Worst case: every input at the end of its bounds that hurts most. */
  readonly low: number
  readonly high: number
  /** Root sum of squares of the single moves: of the bounds themselves, no statement of coverage. */
  readonly rss: readonly [low: number, high: number]
  /** How far each input alone moves the result, widest first. */
  readonly shares: readonly { readonly given: Given; readonly move: number }[]
  /** Assumed values that move the result. */
  readonly hangsOn: readonly Given[]
  /** Inputs whose direction turned inside the bounds: there the extreme was searched for, not proved. */
  readonly turned: readonly Given[]
  /** The inputs at each worst end, to run the calculation on when its working there is wanted. */
  readonly lowAt: Values
  readonly highAt: Values
}

/** What a calculation gives, with a `Bounded` in place of each number. */
export type BoundsOf<R> = R extends number
  ? Bounded
  : R extends string | boolean | null | undefined
    ? R
    : { readonly [K in keyof R]: BoundsOf<R[K]> }

/** Evaluates one calculation again and again with its inputs at their bounds. */
export function boundsOf<T, R>(tree: T, calculation: (x: Plain<T>) => R): BoundsOf<R> {
  const evaluator = evaluatorOf(tree, calculation)
  const inputs = evaluator.givens.map((given, i) => ({ given, i }))
  const loose = inputs.filter(({ given }) => given.low < given.high)
  const assumed = inputs.filter(({ given }) => given.assumed !== undefined)
  if (loose.length === 0 && assumed.length === 0) {
    const at = { lowAt: evaluator.nominal, highAt: evaluator.nominal }
    return withLeaves(evaluator.centre, number => ({ ...exactly(number), ...at })) as BoundsOf<R>
  }
  const moves = loose.map(input => endsOf(input, evaluator))
  let leaf = 0
  return withLeaves(evaluator.centre, () => bound(evaluator, leaf++, { loose, assumed, moves })) as BoundsOf<R>
}

/** The calculation once, at the nominal: every number without bounds. */
export function nominalOf<T, R>(tree: T, calculation: (x: Plain<T>) => R): BoundsOf<R> {
  const { centre } = evaluatorOf(tree, calculation)
  return withLeaves(centre, exactly) as BoundsOf<R>
}

/** All results with one input at each end of its bounds and the others nominal. */
interface Ends extends Loose {
  readonly down: Float64Array
  readonly up: Float64Array
}

function endsOf({ given, i }: Loose, { nominal, at }: Evaluator): Ends {
  return { given, i, down: at(nominal.with(i, given.low)), up: at(nominal.with(i, given.high)) }
}

interface Inputs {
  readonly loose: readonly Loose[]
  readonly assumed: readonly Loose[]
  readonly moves: readonly Ends[]
}

function bound(evaluator: Evaluator, leaf: number, { loose, assumed, moves }: Inputs): Bounded {
  const { nominal, at } = evaluator
  const value = at(nominal)[leaf]!
  const steps = moves.map(({ given, i, down, up }) => ({ given, i, down: change(value, down[leaf]!), up: change(value, up[leaf]!) }))
  const worst = (sign: 1 | -1) => {
    const corner = steps.reduce((v, s) => v.with(s.i, sign * (s.up - s.down) > 0 ? s.given.high : s.given.low), nominal)
    return climb(corner, loose, values => sign * at(values)[leaf]!)
  }
  const [low, high] = [worst(-1), worst(1)]
  const movedBy = ({ i }: Loose) => [nominal, low.values, high.values].some(values => movesLeaf(evaluator, leaf, values, i))
  return {
    value,
    low: 0 - low.best,
    high: high.best,
    rss: spread(value, steps),
    shares: steps
      .map(({ given, down, up }) => ({ given, move: Math.max(Math.abs(down), Math.abs(up)) }))
      .filter(({ move }) => move > 0)
      .sort((a, b) => b.move - a.move),
    hangsOn: assumed.filter(movedBy).map(({ given }) => given),
    turned: [...new Set([...low.turned, ...high.turned])],
    lowAt: low.values,
    highAt: high.values
  }
}

/** A number that nothing moves: what the user set, or what follows from nothing uncertain. */
export function exactly(value: number): Bounded {
  return { value, low: value, high: value, rss: [value, value], shares: [], hangsOn: [], turned: [], lowAt: [], highAt: [] }
}

/** A number that was set or chosen, exact; assumed where nobody chose it. */
export function asChosen(given: Given): Bounded {
  return { ...exactly(given.value), hangsOn: given.assumed === undefined ? [] : [given] }
}

/** What never comes to an end stays so: the moves are no distance from it. */
function spread(value: number, steps: readonly { readonly down: number; readonly up: number }[]): readonly [number, number] {
  if (!Number.isFinite(value)) return [value, value]
  return [
    value - Math.hypot(...steps.map(s => Math.min(0, s.down, s.up))),
    value + Math.hypot(...steps.map(s => Math.max(0, s.down, s.up)))
  ]
}
