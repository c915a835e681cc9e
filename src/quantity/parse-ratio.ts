import { checkText } from './check-text.ts'
import { bad, good, type Outcome } from './fault.ts'
import { exactNumber, NUMBER, numberFault } from './number-text.ts'
import { type Amount, parseQuantity } from './parse-quantity.ts'
import { quoted } from './quoted.ts'

const RATIO = new RegExp(`^(${NUMBER}) ?: ?(${NUMBER})$`, 'i')
const ACCEPTED = 'a ratio, as "1:16", "1/16" or "0.0625"'

/** A taper: `1:16` is a sixteenth. */
export function parseRatio(text: string): Outcome<Amount> {
  const checked = checkText('factor', text)
  if (!checked.ok) return checked
  const [, top, bottom] = RATIO.exec(checked.value) ?? []
  return top === undefined ? plainRatio(text) : quotient(top, bottom!, text)
}

function plainRatio(text: string): Outcome<Amount> {
  const read = parseQuantity('factor', text)
  return read.ok ? read : bad(read.fault.found, ACCEPTED, read.fault.near)
}

function quotient(top: string, bottom: string, text: string): Outcome<Amount> {
  const fault = numberFault(top) ?? numberFault(bottom)
  if (fault !== undefined) return bad(`a number in ${quoted(text)} ${fault}`, ACCEPTED)
  if (exactNumber(bottom).top === 0n) return bad(`${quoted(text)} is a ratio to nought`, ACCEPTED)
  const value = exactNumber(top).over(exactNumber(bottom)).valueOf()
  return good({ value, low: value, high: value, text })
}
