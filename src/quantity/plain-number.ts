import { findUnit } from './find-unit.ts'
import type { Kind } from './kinds.ts'

/** A number of no great length and a unit, with nothing that could be the sign of a tolerance, a range, a fraction or an exponent. */
const PLAIN = /^(\d{1,9}(?:\.\d{1,6})?) ?((?![eE])[A-Za-z%°µΩ][A-Za-z0-9·/²°]*(?:[-.][A-Za-z]+)?)$/

/**
 * Most quantities are a number and a unit that is known: read at once, in the house unit. Undefined where the long way has
 * to be gone, which gives the same wherever this gives something.
 */
export function plainNumber(kind: Kind, text: string): number | undefined {
  const found = PLAIN.exec(text)
  if (found === null) return undefined
  const [, digits = '', word = ''] = found
  const unit = findUnit(kind, word)
  if (unit === undefined) return undefined
  if (unit.house) return Number(digits)
  return unit.quick?.times(digits)
}
