import { answered } from './answered.ts'
import { bends } from './bends.ts'
import { isMore, type Loose, placesFrom } from './climb.ts'
import type { Corner, Search, Toward } from './corners.ts'
import { change, type Evaluator } from './evaluator.ts'
import { type Values, withAt } from './values.ts'

/** What stands at a corner and around it, worked out once for all results. */
export interface Looked extends Toward {
  readonly values: Values
  readonly base: Values
  /** By loose input: all results with that input at each place that is looked at from the corner. */
  readonly along: readonly (readonly Values[])[]
}

/** Every result at a corner and along each loose input from there; null where one of these points has no answer. */
export function lookedAt(corner: Corner, evaluator: Evaluator, loose: readonly Loose[]): Looked | null {
  const values = placed(corner, evaluator, loose)
  return answered(() => {
    const base = evaluator.at(values)
    const along = loose.map(one => wayFrom({ values, base }, one, corner.searches, evaluator.at))
    return { toward: corner.toward, values, base, along }
  })
}

/** All results at the nominal and at the far end of one input; just inside the end it stands at too, where a result bends on the way. */
function wayFrom({ values, base }: Pick<Looked, 'values' | 'base'>, { given, i }: Loose, searches: readonly Search[], at: Evaluator['at']) {
  const [inside, middle, far] = placesFrom(values[i]!, given)
  const seen = (x: number) => at(withAt(values, i, x))
  const way = { end: base, middle: seen(middle), far: seen(far) }
  const share = (middle - values[i]!) / (far - values[i]!)
  return searches.some(({ leaf }) => bends(way, leaf, share)) ? [way.middle, way.far, seen(inside)] : [way.middle, way.far]
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
