import { Given } from '../../formula/given.ts'
import type { Source } from '../../formula/source.ts'

/** A figure of a table, with the span its sources leave. */
export interface Figure {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly source: Source
}

export function figure(
  value: number,
  source: Source,
  { low = value, high = value }: { readonly low?: number; readonly high?: number } = {}
): Figure {
  return { value, low, high, source }
}

/** A table that prints a range: its nominal is halfway. */
export function span(low: number, high: number, source: Source): Figure {
  return { value: (low + high) / 2, low, high, source }
}

/** As an input whose place in a file is that of the word it was looked up by. */
export function givenOf({ value, low, high }: Figure, at: Given['at']): Given {
  return new Given(value, { low, high, at })
}
