import { climb, type Loose } from './climb.ts'
import { cornersOf, isWhole, movedAt, type Search, searchOf } from './corners.ts'
import type { Evaluator } from './evaluator.ts'
import type { Given } from './given.ts'
import { isWorst, type Looked, lookedAt, placed } from './looked.ts'
import type { Moves } from './moves.ts'
import type { Values } from './values.ts'

interface Inputs {
  readonly loose: readonly Loose[]
  readonly assumed: readonly Loose[]
  readonly moves: Moves
}

/** A worst end, its inputs, and whether a step of an assumed input moves the result there. */
export interface End {
  readonly best: number
  readonly turned: readonly Given[]
  readonly values: Values
  readonly moves: (assumed: number) => boolean
}

/**
 * The worst ends of every result. Most results are moved by a few inputs each, so that one corner serves many of them;
 * where it does not, the end is climbed to from a corner of its own. The ends found are the same.
 */
export function worstEnds(evaluator: Evaluator, inputs: Inputs): (leaf: number) => { readonly low: End; readonly high: End } {
  const searches: Search[] = []
  for (let leaf = 0; leaf < evaluator.base.length; leaf++) searches.push(searchOf(leaf, -1, inputs.moves), searchOf(leaf, 1, inputs.moves))
  const ends = { low: [] as End[], high: [] as End[] }
  for (const corner of cornersOf(searches)) {
    const looked = lookedAt(corner, evaluator, inputs.loose)
    const moved = looked === null ? null : once(() => movedAt(evaluator, inputs.assumed, looked.values, looked.base))
    const around = { evaluator, inputs, looked, moved }
    for (const search of corner.searches) (search.sign < 0 ? ends.low : ends.high)[search.leaf] = endOf(search, around)
  }
  return leaf => ({ low: ends.low[leaf]!, high: ends.high[leaf]! })
}

interface Around {
  readonly evaluator: Evaluator
  readonly inputs: Inputs
  readonly looked: Looked | null
  readonly moved: (() => readonly (readonly boolean[])[]) | null
}

function endOf(search: Search, around: Around): End {
  const { evaluator, inputs, looked, moved } = around
  const { leaf, sign } = search
  if (looked !== null && moved !== null && isWorst(search, looked))
    return { values: valuesAt(search, looked, around), best: sign * looked.base[leaf]!, turned: [], moves: k => moved()[k]![leaf]! }
  const { values, best, turned } = climb(placed(search, evaluator, inputs.loose), inputs.loose, at => sign * evaluator.at(at)[leaf]!)
  const climbed = { values, best, turned: turned.filter(given => !isUnturned(given, values, search, inputs.loose)) }
  const movedThere = once(() => movedAt(evaluator, inputs.assumed, climbed.values, evaluator.at(climbed.values)))
  return { ...climbed, moves: k => movedThere()[k]![leaf]! }
}

/** An input that moves nothing from the nominal shows no direction there: where it goes to an end of its bounds elsewhere, none was turned. */
function isUnturned(given: Given, values: Values, { toward }: Search, loose: readonly Loose[]): boolean {
  const j = loose.findIndex(one => one.given === given)
  return toward[j] === 0 && [given.low, given.high].includes(values[loose[j]!.i]!)
}

/** The shared corner, where it moves nothing else; one search alone leaves its other inputs at their low ends. */
function valuesAt(search: Search, looked: Looked, { evaluator, inputs }: Around): Values {
  return isWhole(search, looked) ? looked.values : placed(search, evaluator, inputs.loose)
}

/** Worked out when it is first asked for. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined
  return () => {
    done ??= { value: work() }
    return done.value
  }
}
