import { bad, type Outcome } from './fault.ts'
import { type Kind, rowOf } from './kinds.ts'
import { type Amount, parseQuantity } from './parse-quantity.ts'
import { quoted } from './quoted.ts'

/** From where to where a quantity may lie, in its house unit: with its bounds. */
export interface Within {
  readonly least?: number
  readonly most?: number
}

/** Reads a quantity that is nonsense outside of what it may be. */
export function parseWithin(
  kind: Kind,
  text: string,
  { least = rowOf(kind).least ?? -Infinity, most = Infinity }: Within = {}
): Outcome<Amount> {
  const amount = parseQuantity(kind, text)
  if (!amount.ok || (amount.value.low >= least && amount.value.high <= most)) return amount
  const unit = rowOf(kind).house && ` ${rowOf(kind).house}`
  return bad(quoted(text), most === Infinity ? `${least}${unit} and more, bounds and all` : `${least} to ${most}${unit}, bounds and all`)
}
