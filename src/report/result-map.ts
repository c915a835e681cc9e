import type { Bounded, BoundsOf } from '../formula/bounds.ts'
import type { ResultFacts } from '../formula/formula.ts'
import type { Shown } from '../quantity/digits.ts'
import type { Result } from './answer.ts'
import { resultOf } from './result.ts'

type Figure = Bounded | number | string

/** Asked for, and there is none: shown as no answer, where null leaves a result out. */
export const NONE = Number.POSITIVE_INFINITY

/** By result id: what the number is, where the calculation gives it, and to which side it is rounded for the eye; null or undefined was not asked and is left out. */
export type ResultMap<R> = {
  readonly [id: string]: readonly [
    facts: ResultFacts,
    of: (results: BoundsOf<R>) => Figure | null | undefined,
    name?: string | undefined,
    shown?: Shown | undefined
  ]
}

/** The results of a calculation as the model holds them. */
export function resultsBy<R>(map: ResultMap<R>, bounds: BoundsOf<R>): readonly Result[] {
  return figuresBy(map, bounds, (id, [facts, , name, shown], figure) => resultOf(id, facts, figure, shown, { name }))
}

/** The same ids where there is no answer. */
export function noResultsBy<R>(map: ResultMap<R>): readonly Result[] {
  return Object.entries(map).map(([id, [facts, , name, shown]]) => resultOf(id, facts, null, shown, { name }))
}

/** An extreme that was searched for is no proof: say so. */
export function searchedBy<R>(map: ResultMap<R>, bounds: BoundsOf<R>): readonly string[] {
  const searched = figuresBy(map, bounds, (_, [facts, , name], figure) =>
    typeof figure === 'object' && figure.turned.length > 0
      ? `the worst case of "${name ?? facts.says}" lies inside the bounds of ${figure.turned.map(({ at }) => at.join('.')).join(', ')}: searched for, not proved`
      : ''
  )
  return searched.filter(text => text !== '')
}

function figuresBy<R, F>(
  map: ResultMap<R>,
  bounds: BoundsOf<R>,
  made: (id: string, row: ResultMap<R>[string], figure: Figure) => F
): readonly F[] {
  const all: F[] = []
  for (const id of Object.keys(map)) {
    const figure = map[id]![1](bounds)
    if (figure !== null && figure !== undefined) all.push(made(id, map[id]!, figure))
  }
  return all
}
