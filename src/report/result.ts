import type { Bounded } from '../formula/bounds.ts'
import type { ResultFacts } from '../formula/formula.ts'
import { type Shown, shownFor } from '../quantity/digits.ts'
import { unitOf } from '../quantity/units.ts'
import type { Result } from './answer.ts'

/** What of a result is not as its facts say. */
export interface Own {
  readonly name?: string | undefined
  readonly unit?: string
  readonly ownUnit?: boolean
  readonly hidden?: boolean
}

const AS_ITS_FACTS: Own = {}

/** A result as the model holds it: what is infinite has no answer. */
export function resultOf(
  id: string,
  facts: ResultFacts,
  given: Bounded | number | string | null,
  shown: Shown = shownFor(facts.gives),
  own: Own = AS_ITS_FACTS
): Result {
  const bounded = typeof given === 'object' && given !== null ? given : undefined
  const value = typeof given === 'object' ? (bounded?.value ?? null) : given
  const moved = bounded !== undefined && bounded.low !== bounded.high ? bounded : undefined
  // Written out field by field: spreads made this the slowest line of a long row of sums.
  return {
    id,
    name: own.name ?? facts.says,
    symbol: facts.symbol,
    value: finite(value),
    unit: own.unit ?? (typeof given === 'string' ? '' : unitOf(facts.gives)),
    low: moved === undefined ? null : finite(moved.low),
    high: moved === undefined ? null : finite(moved.high),
    rss: moved?.rss.every(Number.isFinite) ? moved.rss : null,
    samples: moved?.samples?.every(Number.isFinite) ? moved.samples : undefined,
    source: facts.source.id,
    shown,
    ownUnit: own.ownUnit,
    hidden: own.hidden
  }
}

function finite<T>(value: T): T | null {
  if (typeof value === 'number' && Number.isNaN(value)) throw new Error('a result is not a number')
  return typeof value === 'number' && !Number.isFinite(value) ? null : value
}
