import { acceptedText } from './accepted.ts'
import type { Exact } from './exact.ts'
import { bad, good, type Outcome } from './fault.ts'
import type { Unit } from './find-unit.ts'
import type { Kind } from './kinds.ts'
import { exactNumber, numberFault, numberOf } from './number-text.ts'
import { quoted } from './quoted.ts'
import { resolveUnit } from './resolve-unit.ts'
import type { Term } from './scan.ts'

/** The number of a term in the house unit of the kind. */
export function exactOfTerm(kind: Kind, term: Term): Outcome<Exact> {
  const unit = unitOfTerm(kind, term)
  return unit.ok ? good(signed(term).times(unit.value.scale.times).plus(unit.value.scale.plus)) : unit
}

/** The same as one number. In the house unit it is the number as written, and nothing is worked out. */
export function valueOfTerm(kind: Kind, term: Term): Outcome<number> {
  const unit = unitOfTerm(kind, term)
  if (!unit.ok) return unit
  if (!unit.value.house) return good(signed(term).times(unit.value.scale.times).plus(unit.value.scale.plus).valueOf())
  const size = numberOf(term.digits)
  return good(term.negative && size !== 0 ? -size : size)
}

/** The unit of a term whose number can be what it is. */
export function unitOfTerm(kind: Kind, term: Term): Outcome<Unit> {
  const fault = numberFault(term.digits)
  return fault === undefined ? resolveUnit(kind, term) : bad(`${quoted(term.digits)} ${fault}`, acceptedText(kind))
}

function signed({ digits, negative }: Term): Exact {
  const size = exactNumber(digits)
  return negative ? size.negated() : size
}
