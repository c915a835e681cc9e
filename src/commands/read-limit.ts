import { good, type Outcome } from '../quantity/fault.ts'
import { parseQuantity } from '../quantity/parse-quantity.ts'
import type { Limit } from '../rules/judge.ts'

/** A limit of drop as a share of the bus, or in volts. */
export function readLimit(text: string): Outcome<Limit & { readonly unit: '%' | 'V' }> {
  const share = parseQuantity('percent', text)
  if (share.ok) return good({ value: share.value.value, unit: '%' })
  const volts = parseQuantity('voltage', text)
  return volts.ok
    ? good({ value: volts.value.value, unit: 'V' })
    : { ok: false, fault: { ...volts.fault, accepted: 'a share as "3 %" or a voltage as "0.5 V"' } }
}
