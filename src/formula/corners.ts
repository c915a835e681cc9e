import { type climb, isMore, type Loose, placesFrom } from './climb.ts'
import { change, type Evaluator, nudgedAt, type Values } from './evaluator.ts'
import { NoAnswer } from './no-answer.ts'
import { OutsideRange } from './outside-range.ts'

/** One worst end of one result that is looked for: which inputs move it, and to which of their ends. */
export interface Search {
  readonly leaf: number
  readonly sign: 1 | -1
  /** By place in the loose inputs: the end to go to; undefined where the input does not move it from the nominal. */
  readonly ends: readonly (number | undefined)[]
}

export type Worst = ReturnType<typeof climb>

/** A point that is a corner for several searches at once: where they want nothing, it stands anywhere. */
interface Corner {
  readonly ends: (number | undefined)[]
  readonly searches: Search[]
}

/** What stands at a corner and around it, worked out once for all results. */
export interface Looked {
  readonly values: Values
  readonly base: Float64Array
  /** By loose input: all results with that input at each place that is looked at from the corner. */
  readonly along: readonly (readonly Float64Array[])[]
}

/** Puts searches that do not contradict each other on one corner: what moves one of them leaves the others alone. */
export function cornersOf(searches: readonly Search[]): readonly Corner[] {
  const corners: Corner[] = []
  for (const search of searches.toSorted((a, b) => countOf(b) - countOf(a))) {
    const fitting = corners.find(({ ends }) => search.ends.every((end, j) => end === undefined || ends[j] === undefined || ends[j] === end))
    if (fitting === undefined) corners.push({ ends: [...search.ends], searches: [search] })
    else {
      for (const [j, end] of search.ends.entries()) fitting.ends[j] ??= end
      fitting.searches.push(search)
    }
  }
  return corners
}

function countOf({ ends }: Search): number {
  return ends.filter(end => end !== undefined).length
}

/** Every result at a corner and along each loose input from there; nothing where one of these points has no answer. */
export function lookedAt({ ends }: Corner, { nominal, at }: Evaluator, loose: readonly Loose[]): Looked | undefined {
  const values = placed(nominal, loose, ends)
  try {
    const base = at(values)
    const along = loose.map(({ given, i }) => placesFrom(values[i]!, given).map(x => at(values.with(i, x))))
    return { values, base, along }
  } catch (error) {
    if (error instanceof OutsideRange || error instanceof NoAnswer) return undefined
    throw error
  }
}

/** The corner of one search alone: an input that does not move it stands at its low end. */
export function cornerOf({ ends }: Pick<Search, 'ends'>, { nominal }: Evaluator, loose: readonly Loose[]): Values {
  return placed(nominal, loose, ends)
}

function placed(nominal: Values, loose: readonly Loose[], ends: readonly (number | undefined)[]): Values {
  const values = [...nominal]
  for (const [j, { given, i }] of loose.entries()) values[i] = ends[j] ?? given.low
  return values
}

/** Whether the shared corner is the worst end of one search: nothing along any input is worth more, and what should not move it does not. */
export function isWorst({ leaf, sign, ends }: Search, { base, along }: Looked): boolean {
  const best = sign * base[leaf]!
  return along.every((places, j) =>
    ends[j] === undefined
      ? places.every(numbers => change(base[leaf]!, numbers[leaf]!) === 0)
      : places.every(numbers => !isMore(sign * numbers[leaf]!, best))
  )
}

/** Which results a small step of each assumed input moves, at one point. */
export function movedAt(evaluator: Evaluator, assumed: readonly Loose[], values: Values, base: Float64Array): readonly Uint8Array[] {
  return assumed.map(({ i }) => {
    const beside = nudgedAt(evaluator, values, i)
    return Uint8Array.from(base, (number, leaf) => (change(number, beside[leaf]!) === 0 ? 0 : 1))
  })
}
