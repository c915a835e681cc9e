import { isMore, type Loose, placesFrom } from './climb.ts'
import { change, type Evaluator, nudgedAt } from './evaluator.ts'
import type { Moves } from './moves.ts'
import { NoAnswer } from './no-answer.ts'
import { OutsideRange } from './outside-range.ts'
import { type Values, withAt } from './values.ts'

type Side = -1 | 0 | 1

/** To which of its ends each loose input goes: -1 low, 1 high; 0 where it moves nothing from the nominal, and stands anywhere. */
interface Toward {
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
interface Corner {
  readonly toward: Side[]
  readonly searches: Search[]
}

/** What stands at a corner and around it, worked out once for all results. */
export interface Looked extends Toward {
  readonly values: Values
  readonly base: Values
  /** By loose input: all results with that input at each place that is looked at from the corner. */
  readonly along: readonly (readonly Values[])[]
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

/** Every result at a corner and along each loose input from there; nothing where one of these points has no answer. */
export function lookedAt(corner: Toward, evaluator: Evaluator, loose: readonly Loose[]): Looked | undefined {
  const values = placed(corner, evaluator, loose)
  const { at } = evaluator
  try {
    const base = at(values)
    const along = loose.map(({ given, i }) => placesFrom(values[i]!, given).map(x => at(withAt(values, i, x))))
    return { toward: corner.toward, values, base, along }
  } catch (error) {
    if (error instanceof OutsideRange || error instanceof NoAnswer) return undefined
    throw error
  }
}

/** The inputs at a corner: what may stand anywhere stands at its low end. */
export function placed({ toward }: Toward, { nominal }: Evaluator, loose: readonly Loose[]): Values {
  const values = nominal.slice()
  for (let j = 0; j < loose.length; j++) {
    const { given, i } = loose[j]!
    values[i] = toward[j]! > 0 ? given.high : given.low
  }
  return values
}

/** Whether the shared corner is the worst end of one search: nothing along any input is worth more, and what should not move it does not. */
export function isWorst({ leaf, sign, toward }: Search, { base, along }: Looked): boolean {
  const best = base[leaf]!
  for (let j = 0; j < along.length; j++)
    for (const numbers of along[j]!) {
      const number = numbers[leaf]!
      if (toward[j] === 0 ? change(best, number) !== 0 : isMore(sign * number, sign * best)) return false
    }
  return true
}

/** Which results a small step of each assumed input moves, at one point. */
export function movedAt(evaluator: Evaluator, assumed: readonly Loose[], values: Values, base: Values): readonly (readonly boolean[])[] {
  return assumed.map(({ i }) => {
    const beside = nudgedAt(evaluator, values, i)
    return base.map((number, leaf) => change(number, beside[leaf]!) !== 0)
  })
}
