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
  const base = { id, name, symbol, unit: typeof given === 'string' ? '' : unitOf(gives), source: source.id, shown }
  if (typeof given !== 'object' || given === null) return { ...base, value: finite(given), low: null, high: null, rss: null }
  const moved = given.low !== given.high
  return {
    ...base,
    value: finite(given.value),
    low: moved ? finite(given.low) : null,
    high: moved ? finite(given.high) : null,
    rss: moved && given.rss.every(Number.isFinite) ? given.rss : null
  }
}

function finite<T>(value: T): T | null {
  if (typeof value === 'number' && Number.isNaN(value)) throw new Error('a result is not a number')
  return typeof value === 'number' && !Number.isFinite(value) ? null : value
}
