import type { Bounded } from '../formula/bounds.ts'
import type { ResultFacts } from '../formula/formula.ts'
import { type Shown, shownFor } from '../quantity/digits.ts'
import { unitOf } from '../quantity/units.ts'
import type { Result } from './answer.ts'

/** A result as the model holds it: what is infinite has no answer. */
export function resultOf(
  id: string,
  facts: ResultFacts,
  given: Bounded | number | string | null,
  shown: Shown = shownFor(facts.gives)
): Result {
  const { symbol, says: name, gives, source } = facts
  const bounded = typeof given === 'object' && given !== null ? given : undefined
  const value = typeof given === 'object' ? (bounded?.value ?? null) : given
  const moved = bounded !== undefined && bounded.low !== bounded.high ? bounded : undefined
  // Written out field by field: a spread made this the slowest line of a long row of sums.
  const result = {
    id,
    name,
    symbol,
    value: finite(value),
    unit: typeof given === 'string' ? '' : unitOf(gives),
    low: moved === undefined ? null : finite(moved.low),
    high: moved === undefined ? null : finite(moved.high),
    rss: moved?.rss.every(Number.isFinite) ? moved.rss : null,
    source: source.id,
    shown
  }
  return moved?.samples?.every(Number.isFinite) ? { ...result, samples: moved.samples } : result
}

function finite<T>(value: T): T | null {
  if (typeof value === 'number' && Number.isNaN(value)) throw new Error('a result is not a number')
  return typeof value === 'number' && !Number.isFinite(value) ? null : value
}
