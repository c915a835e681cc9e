import type { Loose } from './climb.ts'
import { movedAt } from './corners.ts'
import { change, type Evaluator, evaluatorOf, ranAt, recallingAt, runnerOf } from './evaluator.ts'
import { exactValues, type Given, type Plain } from './given.ts'
import { checked, withLeaves } from './leaves.ts'
import { recalled } from './memory.ts'
import { moversOf, movesOf, placesOf, spread } from './moves.ts'
import { drawsWanted, type Seen, sampled } from './samples.ts'
import type { Values } from './values.ts'
import { worstEnds } from './worst-ends.ts'

export interface Bounded {
  readonly value: number
  /** Worst case: every input at the end of its bounds that hurts most. */
  readonly low: number
  readonly high: number
  /** Root sum of squares of the single moves: of the bounds themselves, no statement of coverage. */
  readonly rss: readonly [low: number, high: number]
  /** Where most of the random draws fell, where they were asked for: an estimate. */
  readonly samples?: readonly [low: number, high: number]
  /** The inputs with bounds that move the result, the widest first. */
  readonly movers: readonly Given[]
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
  return recalled({ tree, calculation, draws: drawsWanted() }, () => bounded(tree, calculation))
}

function bounded<T, R>(tree: T, calculation: (x: Plain<T>) => R): BoundsOf<R> {
  const exact = exactValues(tree)
  if (exact !== undefined) return unmoved(tree, calculation, exact)
  const evaluator = evaluatorOf(runnerOf(tree, calculation))
  const inputs = evaluator.givens.map((given, i) => ({ given, i }))
  const loose = inputs.filter(({ given }) => given.low < given.high)
  const assumed = inputs.filter(({ given }) => given.assumed !== undefined)
  const moving = inputs.filter(({ given }) => given.low < given.high || given.assumed !== undefined).map(({ i }) => i)
  const all = boundedBy({ ...evaluator, at: recallingAt(evaluator, moving) }, loose, assumed)
  const seen = sampled(evaluator.nominal, loose, evaluator.at)
  let leaf = 0
  return withLeaves(evaluator.centre, () => {
    const draws = seen?.[leaf]
    const one = all[leaf++]!
    return draws === undefined ? one : widened(one, draws, loose)
  }) as BoundsOf<R>
}

/** Where nothing is uncertain the calculation runs once, and both ends stand at the nominal. */
function unmoved<T, R>(tree: T, calculation: (x: Plain<T>) => R, nominal: Values): BoundsOf<R> {
  return withNumbers(ranAt(tree, calculation), value => exactly(value, nominal))
}

/** The calculation once, at the nominal: every number without bounds. */
export function nominalOf<T, R>(tree: T, calculation: (x: Plain<T>) => R): BoundsOf<R> {
  return withNumbers(ranAt(tree, calculation), value => exactly(value))
}

function withNumbers<R>(results: R, bounded: (value: number) => Bounded): BoundsOf<R> {
  return withLeaves(results, number => bounded(checked(number, results))) as BoundsOf<R>
}

/** Every result: how each input moves it alone, then its two worst ends, then what it hangs on. */
function boundedBy(evaluator: Evaluator, loose: readonly Loose[], assumed: readonly Loose[]): readonly Bounded[] {
  const { nominal, base } = evaluator
  const moves = movesOf(evaluator, loose)
  const worst = worstEnds(evaluator, { loose, assumed, moves })
  const movedNominal = movedAt(evaluator, assumed, nominal, base)
  return base.map((value, leaf) => {
    const { low, high } = worst(leaf)
    const moved = (_: unknown, k: number) => movedNominal[k]![leaf]! || low.moves(k) || high.moves(k)
    return {
      value,
      low: 0 - low.best,
      high: high.best,
      rss: spread(moves, value, leaf),
      movers: moversOf(moves, loose, leaf),
      hangsOn: placesOf(assumed.filter(moved).map(({ given }) => given)),
      turned: either(low.turned, high.turned),
      lowAt: low.values,
      highAt: high.values
    }
  })
}

/** What stands in one of two lists, each once. */
function either(one: readonly Given[], other: readonly Given[]): readonly Given[] {
  return placesOf([...one, ...other])
}

/** With the estimate beside it. A draw beyond the worst case shows that the search for it missed something: then the draw is the worst. */
function widened(bounded: Bounded, seen: Seen, loose: readonly Loose[]): Bounded {
  const { low, high, turned, lowAt, highAt } = bounded
  const [lower, higher] = [change(low, seen.least) < 0, change(high, seen.most) > 0]
  return {
    ...bounded,
    samples: seen.middle,
    low: lower ? seen.least : low,
    lowAt: lower ? seen.leastAt : lowAt,
    high: higher ? seen.most : high,
    highAt: higher ? seen.mostAt : highAt,
    turned:
      lower || higher
        ? either(
            turned,
            loose.map(({ given }) => given)
          )
        : turned
  }
}

/** A number that nothing moves: what the user set, or what follows from nothing uncertain. */
export function exactly(value: number, at: Values = []): Bounded {
  return { value, low: value, high: value, rss: [value, value], movers: [], hangsOn: [], turned: [], lowAt: at, highAt: at }
}

/** A number that was set or chosen, exact; assumed where nobody chose it. */
export function asChosen(given: Given): Bounded {
  return { ...exactly(given.value), hangsOn: given.assumed === undefined ? [] : [given] }
}
