import { isScalar, isSeq, type Node } from 'yaml'
import { Given } from '../formula/given.ts'
import { bad, good, type Outcome } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { parseSpan } from '../quantity/parse-quantity.ts'
import { quoted } from '../quantity/quoted.ts'
import { parseWithin } from '../quantity/within.ts'
import type { Field, Path, ScalarField } from './field.ts'

/** Reads the text of one field. */
export function readScalar(field: ScalarField, text: string, at: Path): Outcome<unknown> {
  switch (field.is) {
    case 'text':
      return /[\p{Cc}\p{Cf}]/u.test(text) ? bad(`a control character in ${quoted(text)}`, 'plain text on one line') : good(text)
    case 'choice':
      return field.of.includes(text) ? good(text) : bad(quoted(text), field.of.join(', '), nearest(text, field.of))
    case 'word':
      return field.read(text, at)
    case 'span':
      return parseSpan(field.kind, text)
    case 'quantity': {
      const amount = parseWithin(field.kind, text, field)
      return amount.ok ? good(new Given(amount.value.value, { low: amount.value.low, high: amount.value.high, at })) : amount
    }
  }
}

/** What stands there, for a fault. */
export function kindOf(node: Node | null): string {
  if (node === null || (isScalar(node) && node.value === null)) return 'nothing'
  if (isScalar(node)) return quoted(String(node.source ?? node.value))
  return isSeq(node) ? 'a list' : 'a block of fields'
}

/** What belongs there. */
export function describe(field: Field): string {
  return field.example === undefined ? field.says : `${field.says}, as ${field.example}`
}
