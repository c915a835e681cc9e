import { Given } from '../../formula/given.ts'
import { good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'

/** What a casting is to be warmed to. */
export type Target =
  | { readonly by: 'temperature'; readonly targetC: Given }
  /** So far above the higher of dew and frost point. */
  | { readonly by: 'dew'; readonly aboveK: Given }

const FORM = 'a temperature as "5 °C", or "3 K above dew"'
const LONGEST = 60
const ABOVE_DEW = /^(.*\S)\s+above\s+(?:the\s+)?(?:dew|frost|dew or frost)(?:\s+point)?$/i

/** `5 °C`, or `3 K above dew`. */
export function readTarget(text: string, at: readonly (string | number)[] = ['target']): Outcome<Target> {
  const above = text.length > LONGEST ? undefined : ABOVE_DEW.exec(text.trim())?.[1]
  const amount = above === undefined ? parseQuantity('temperature', text) : parseQuantity('difference', above)
  if (!amount.ok) return above === undefined ? { ok: false, fault: { ...amount.fault, accepted: FORM } } : amount
  const given = new Given(amount.value.value, { ...amount.value, at })
  return good(above === undefined ? { by: 'temperature', targetC: given } : { by: 'dew', aboveK: given })
}
