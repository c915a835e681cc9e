import { Given } from '../../formula/given.ts'
import { good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'

/** How cold a casting is at switch-on. As the air: the two are one quantity and move as one. */
export type Start = { readonly by: 'air' } | { readonly by: 'temperature'; readonly startC: Given }

const AS_THE_AIR = /^as (?:the )?air$/i
const FORM = 'a temperature as "-18 °C", or "as the air"'

/** `-18 °C`, or `as the air`. */
export function readStart(text: string, at: readonly (string | number)[]): Outcome<Start> {
  if (AS_THE_AIR.test(text.trim())) return good({ by: 'air' })
  const amount = parseQuantity('temperature', text)
  if (!amount.ok) return { ok: false, fault: { ...amount.fault, accepted: FORM } }
  return good({ by: 'temperature', startC: new Given(amount.value.value, { ...amount.value, at }) })
}
