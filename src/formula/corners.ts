import type { Loose } from './climb.ts'
import { change, type Evaluator, nudgedAt } from './evaluator.ts'
import type { Moves } from './moves.ts'
import type { Values } from './values.ts'

type Side = -1 | 0 | 1

/** To which of its ends each loose input goes: -1 low, 1 high; 0 where it moves nothing from the nominal, and stands anywhere. */
export interface Toward {
  readonly toward: readonly Side[]
}

/** One worst end of one result that is looked for: which inputs move it, and to which of their ends. */
export interface Search extends Toward {
  readonly leaf: number
  readonly sign: 1 | -1
  /** How many inputs move it. */
  readonly count: number
}

/** A point that is a corner for several searches at once. */
export interface Corner {
  readonly toward: Side[]
  readonly searches: Search[]
}

export function searchOf(leaf: number, sign: 1 | -1, { down, up }: Moves): Search {
  const toward: Side[] = []
  let count = 0
  for (let j = 0; j < down.length; j++) {
    const [fall, rise] = [down[j]![leaf]!, up[j]![leaf]!]
    const moves = fall !== 0 || rise !== 0
    toward.push(moves ? (sign * (rise - fall) > 0 ? 1 : -1) : 0)
    if (moves) count++
  }
  return { leaf, sign, toward, count }
}

/** Puts searches that do not contradict each other on one corner: what moves one of them leaves the others alone. */
export function cornersOf(searches: readonly Search[]): readonly Corner[] {
  const corners: Corner[] = []
  for (const search of searches.toSorted((a, b) => b.count - a.count)) {
    const fitting = corners.find(corner => agree(corner, search))
    if (fitting === undefined) corners.push({ toward: search.toward.slice(), searches: [search] })
    else join(fitting, search)
  }
  return corners
}

function agree({ toward: a }: Toward, { toward: b }: Toward): boolean {
  for (let j = 0; j < a.length; j++) if (a[j]! * b[j]! < 0) return false
  return true
}

/** Whether a search moves every input that its corner moves. */
export function isWhole({ toward: a }: Toward, { toward: b }: Toward): boolean {
  for (let j = 0; j < a.length; j++) if (a[j]! !== b[j]!) return false
  return true
}

function join({ toward, searches }: Corner, search: Search): void {
  for (let j = 0; j < toward.length; j++) if (toward[j] === 0) toward[j] = search.toward[j]!
  searches.push(search)
}

/** Which results a small step of each assumed input moves, at one point. */
export function movedAt(evaluator: Evaluator, assumed: readonly Loose[], values: Values, base: Values): readonly (readonly boolean[])[] {
  return assumed.map(({ i }) => {
    const beside = nudgedAt(evaluator, values, i)
    return base.map((number, leaf) => change(number, beside[leaf]!) !== 0)
  })
}
