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
  return figuresBy(map, bounds).map(({ id, facts, figure, shown }) => resultOf(id, facts, figure, shown))
}

/** The same ids where there is no answer. */
export function noResultsBy<R>(map: ResultMap<R>): readonly Result[] {
  return Object.entries(map).map(([id, [facts, , name = facts.says, shown]]) => resultOf(id, { ...facts, says: name }, null, shown))
}

/** An extreme that was searched for is no proof: say so. */
export function searchedBy<R>(map: ResultMap<R>, bounds: BoundsOf<R>): readonly string[] {
  return figuresBy(map, bounds).flatMap(({ facts, figure }) => {
    const turned = typeof figure === 'object' ? figure.turned.map(({ at }) => at.join('.')) : []
    return turned.length === 0
      ? []
      : [`the worst case of "${facts.says}" lies inside the bounds of ${turned.join(', ')}: searched for, not proved`]
  })
}

function figuresBy<R>(map: ResultMap<R>, bounds: BoundsOf<R>) {
  return Object.entries(map).flatMap(([id, [facts, of, name = facts.says, shown]]) => {
    const figure = of(bounds)
    return figure === null || figure === undefined ? [] : [{ id, facts: { ...facts, says: name }, figure, shown }]
  })
}
