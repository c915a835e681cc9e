import { acceptedText, withArticle } from './accepted.ts'
import { bad, good, type Outcome } from './fault.ts'
import { findUnit, measureOf, spellingsOf, type Unit } from './find-unit.ts'
import { type Kind, rowOf } from './kinds.ts'
import { nearest } from './near.ts'
import { quoted } from './quoted.ts'
import { numberText, type Term } from './scan.ts'
import { MEANT } from './spellings/foreign.ts'
import { unitKey } from './unit-key.ts'

/** The unit of a number, or why it cannot be that. */
export function resolveUnit(kind: Kind, term: Term): Outcome<Unit> {
  const { unit, text } = term
  const found = findUnit(kind, unit)
  if (found !== undefined) return good(found)
  if (unit === '') return bareFault(kind, term)
  const measure = measureOf(unit)
  if (measure === undefined) return bad(`unknown unit ${quoted(unit)}`, acceptedText(kind), nearest(unit, spellingsOf(rowOf(kind).units)))
  const meant = MEANT[kind]?.[unitKey(unit)]
  return bad(`${quoted(text)} is ${withArticle(measure)}`, acceptedText(kind), meant && `${numberText(term)} ${meant}`)
}

function bareFault(kind: Kind, term: Term): Outcome<Unit> {
  const labels = Object.keys(rowOf(kind).units)
  const near = kind === 'percent' ? asShare(numberText(term)) : numberText(term)
  return bad(`${quoted(term.text)} has no unit`, acceptedText(kind), labels.length === 1 ? `${near} ${labels[0]}` : undefined)
}

/** Up to 1 it is more likely a share of the whole: 0.9 is meant as 90 %. */
function asShare(text: string): string {
  const share = Number(text)
  return share > 0 && share <= 1 ? String(Number((100 * share).toPrecision(12))) : text
}
