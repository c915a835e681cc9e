import type { Loose } from './climb.ts'
import { change, type Evaluator } from './evaluator.ts'
import type { Given } from './given.ts'
import { type Values, withAt } from './values.ts'

/** How every loose input moves every result from the nominal, alone: by input, then by result. */
export interface Moves {
  readonly down: readonly Values[]
  readonly up: readonly Values[]
}

export function movesOf({ nominal, base, at }: Evaluator, loose: readonly Loose[]): Moves {
  const movesTo = (i: number, value: number) => changes(base, at(withAt(nominal, i, value)))
  return {
    down: loose.map(({ given, i }) => movesTo(i, given.low)),
    up: loose.map(({ given, i }) => movesTo(i, given.high))
  }
}

function changes(from: Values, to: Values): Values {
  const changed = new Array<number>(from.length)
  for (let leaf = 0; leaf < changed.length; leaf++) changed[leaf] = change(from[leaf]!, to[leaf]!)
  return changed
}

/** The inputs that move one result, widest first. */
export function moversOf({ down, up }: Moves, loose: readonly Loose[], leaf: number): readonly Given[] {
  const widths: { readonly given: Given; readonly width: number }[] = []
  for (let j = 0; j < loose.length; j++) {
    const width = Math.max(Math.abs(down[j]![leaf]!), Math.abs(up[j]![leaf]!))
    if (width > 0) widths.push({ given: loose[j]!.given, width })
  }
  return placesOf(widths.sort((a, b) => b.width - a.width).map(({ given }) => given))
}

/** What stands at one place, as the tolerance of several parts of a kind, is named once: the first of it. */
export function placesOf(givens: readonly Given[]): readonly Given[] {
  return givens.filter((given, i) => givens.findIndex(({ at }) => at === given.at) === i)
}

/** Root sum of squares of the single moves. What never comes to an end stays so: the moves are no distance from it. */
export function spread({ down, up }: Moves, value: number, leaf: number): readonly [low: number, high: number] {
  if (!Number.isFinite(value)) return [value, value]
  let [falls, rises] = [0, 0]
  for (let j = 0; j < down.length; j++) {
    const [one, other] = [down[j]![leaf]!, up[j]![leaf]!]
    falls += Math.min(0, one, other) ** 2
    rises += Math.max(0, one, other) ** 2
  }
  return [value - Math.sqrt(falls), value + Math.sqrt(rises)]
}
