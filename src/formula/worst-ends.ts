import { climb, type Loose } from './climb.ts'
import { cornerOf, cornersOf, isWorst, type Looked, lookedAt, movedAt, type Search, type Worst } from './corners.ts'
import type { Evaluator } from './evaluator.ts'
import type { Given } from './given.ts'

/** How one input moves one result from the nominal, alone. */
export interface Step {
  readonly given: Given
  readonly down: number
  readonly up: number
}

interface Inputs {
  readonly loose: readonly Loose[]
  readonly assumed: readonly Loose[]
  /** By result, then by loose input. */
  readonly steps: readonly (readonly Step[])[]
}

/** A worst end, and whether a step of an assumed input moves the result there. */
export interface End extends Worst {
  readonly moves: (assumed: number) => boolean
}

/**
 * The worst ends of every result. Most results are moved by a few inputs each, so that one corner serves many of them;
 * where it does not, the end is climbed to from a corner of its own. The ends found are the same.
 */
export function worstEnds(evaluator: Evaluator, inputs: Inputs): (leaf: number) => { readonly low: End; readonly high: End } {
  const searches = inputs.steps.flatMap((steps, leaf) => [searchOf(leaf, -1, steps), searchOf(leaf, 1, steps)])
  const found = new Map<Search, End>()
  for (const corner of cornersOf(searches)) {
    const looked = lookedAt(corner, evaluator, inputs.loose)
    const moved = looked === undefined ? undefined : once(() => movedAt(evaluator, inputs.assumed, looked.values, looked.base))
    for (const search of corner.searches) found.set(search, endOf(search, { evaluator, inputs, looked, moved }))
  }
  return leaf => ({ low: found.get(searches[2 * leaf]!)!, high: found.get(searches[2 * leaf + 1]!)! })
}

function searchOf(leaf: number, sign: 1 | -1, steps: readonly Step[]): Search {
  const ends = steps.map(({ given, down, up }) => {
    if (down === 0 && up === 0) return undefined
    return sign * (up - down) > 0 ? given.high : given.low
  })
  return { leaf, sign, ends }
}

interface Around {
  readonly evaluator: Evaluator
  readonly inputs: Inputs
  readonly looked: Looked | undefined
  readonly moved: (() => readonly Uint8Array[]) | undefined
}

function endOf(search: Search, { evaluator, inputs, looked, moved }: Around): End {
  const { leaf, sign } = search
  const values = cornerOf(search, evaluator, inputs.loose)
  if (looked !== undefined && moved !== undefined && isWorst(search, looked))
    return { values, best: sign * looked.base[leaf]!, turned: [], moves: k => moved()[k]![leaf] === 1 }
  const climbed = climb(values, inputs.loose, at => sign * evaluator.at(at)[leaf]!)
  const movedThere = once(() => movedAt(evaluator, inputs.assumed, climbed.values, evaluator.at(climbed.values)))
  return { ...climbed, moves: k => movedThere()[k]![leaf] === 1 }
}

/** Worked out when it is first asked for. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined
  return () => {
    done ??= { value: work() }
    return done.value
  }
}
