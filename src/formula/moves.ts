import type { Loose } from './climb.ts'
import { change, type Evaluator } from './evaluator.ts'
import type { Given } from './given.ts'

/** How every loose input moves every result from the nominal, alone: by input, then by result. */
export interface Moves {
  readonly down: readonly Float64Array[]
  readonly up: readonly Float64Array[]
}

export function movesOf({ nominal, base, at }: Evaluator, loose: readonly Loose[]): Moves {
  const movesTo = (i: number, value: number) => {
    const moved = at(nominal.with(i, value))
    return base.map((number, leaf) => change(number, moved[leaf]!))
  }
  const both = loose.map(({ given, i }) => ({ down: movesTo(i, given.low), up: movesTo(i, given.high) }))
  return { down: both.map(({ down }) => down), up: both.map(({ up }) => up) }
}

/** The inputs that move one result, widest first. */
export function moversOf({ down, up }: Moves, loose: readonly Loose[], leaf: number): readonly Given[] {
  const widths: { readonly given: Given; readonly width: number }[] = []
  for (let j = 0; j < loose.length; j++) {
    const width = Math.max(Math.abs(down[j]![leaf]!), Math.abs(up[j]![leaf]!))
    if (width > 0) widths.push({ given: loose[j]!.given, width })
  }
  return widths.sort((a, b) => b.width - a.width).map(({ given }) => given)
}

/** Root sum of squares of the single moves. What never comes to an end stays so: the moves are no distance from it. */
export function spread({ down, up }: Moves, value: number, leaf: number): readonly [low: number, high: number] {
  if (!Number.isFinite(value)) return [value, value]
  const falls = down.map((moved, j) => Math.min(0, moved[leaf]!, up[j]![leaf]!))
  const rises = down.map((moved, j) => Math.max(0, moved[leaf]!, up[j]![leaf]!))
  return [value - Math.hypot(...falls), value + Math.hypot(...rises)]
}
