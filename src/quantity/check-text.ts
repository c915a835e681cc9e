import { acceptedText } from './accepted.ts'
import { bad, good, type Outcome } from './fault.ts'
import { foldText } from './fold-text.ts'
import type { Kind } from './kinds.ts'
import { hasHidden, quoted } from './quoted.ts'

const LONGEST = 100
const COMMA = /,\d/
/** A number with marks in it, and never the two points of a range. */
const MARKED = /\d+(?:[.,]\d+)+|(?<![\d.])[.,]\d+/g
const THOUSANDS = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/
/** What other people put between two ends. */
const OTHER_RANGE = / ?(?:…|\.{3,}|[–—]|\bto\b) ?(?=[+-]?\.?\d)/

/** The folded text, where there is nothing in it that no quantity can have. */
export function checkText(kind: Kind, text: string): Outcome<string> {
  if (text.length > LONGEST)
    return bad(`a text of ${text.length} characters, ${quoted(text)}`, `${acceptedText(kind)}, in at most ${LONGEST} characters`)
  const folded = foldText(text)
  if (folded.trim() === '') return bad('an empty text', acceptedText(kind))
  if (hasHidden(folded)) return bad(`a control or hidden character in ${quoted(text)}`, acceptedText(kind))
  if (folded.includes(',') && COMMA.test(folded)) return commaFault(folded, text)
  if (OTHER_RANGE.test(folded))
    return bad(`no range in ${quoted(text)}`, 'two points between the ends of a range', folded.replace(OTHER_RANGE, '..'))
  return good(folded)
}

function commaFault(folded: string, text: string): Outcome<string> {
  const pointed = folded.replace(MARKED, withPoint)
  const grouped = folded.match(MARKED)?.some(number => THOUSANDS.test(number)) === true
  const accepted = grouped
    ? `a decimal point, and no mark for thousands: "${pointed}" or "${folded.replaceAll(',', '')}"`
    : 'a decimal point'
  return bad(`decimal comma in ${quoted(text)}`, accepted, pointed)
}

/** One comma is the decimal mark, and so is the last of two different marks; a comma that comes twice marks thousands. */
function withPoint(number: string): string {
  const commas = number.split(',').length - 1
  if (commas > 1 || number.lastIndexOf(',') < number.lastIndexOf('.')) return number.replaceAll(',', '')
  return number.replaceAll('.', '').replace(',', '.')
}
