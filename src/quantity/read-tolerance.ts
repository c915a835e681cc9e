import { acceptedText } from './accepted.ts'
import { Exact, NOUGHT } from './exact.ts'
import { bad, good, type Outcome } from './fault.ts'
import { fillUnits, isPercent } from './fill-units.ts'
import { findUnit } from './find-unit.ts'
import { type Kind, rowOf } from './kinds.ts'
import { exactNumber } from './number-text.ts'
import { quoted } from './quoted.ts'
import type { Ends } from './read-range.ts'
import { exactOfTerm, unitOfTerm } from './read-term.ts'
import type { Term } from './scan.ts'

export interface Toleranced extends Ends {
  readonly nominal: Exact
}

const HUNDRED = new Exact(100n)

/** `11.5 ± 0.2 mm`, `45 W +5 % -10 %`: the number written, and its bounds. */
export function readTolerance(kind: Kind, terms: readonly Term[]): Outcome<Toleranced> {
  const [first, ...rest] = fillUnits(kind, terms)
  const nominal = exactOfTerm(kind, first!)
  if (!nominal.ok) return nominal
  let [low, high] = [nominal.value, nominal.value]
  for (const term of rest) {
    const size = sizeOf(kind, nominal.value, term)
    if (!size.ok) return size
    if (term.joint !== '+') low = nominal.value.minus(size.value)
    if (term.joint !== '-') high = nominal.value.plus(size.value)
  }
  return good({ nominal: nominal.value, low, high })
}

/** How far a tolerance reaches, in house units. */
function sizeOf(kind: Kind, nominal: Exact, term: Term): Outcome<Exact> {
  const { digits, unit, text, negative } = term
  if (negative) return bad(`the tolerance ${quoted(text)} is negative`, 'a tolerance without a sign, as "± 0.2 mm"')
  if (isPercent(unit)) return shareOf(kind, nominal, term)
  if (unit === '' && !/[1-9]/.test(digits)) return good(NOUGHT)
  if (unit === '' && rowOf(kind).pure !== true)
    return bad(`the tolerance ${quoted(text)} has no unit`, `${acceptedText(kind)}, or "${digits} %"`)
  const scale = findUnit(kind, unit)?.scale
  const known = scale === undefined ? unitOfTerm(rowOf(kind).tolerance ?? kind, term) : unitOfTerm(kind, term)
  return known.ok ? good(exactNumber(digits).times(known.value.scale.times)) : known
}

function shareOf(kind: Kind, nominal: Exact, term: Term): Outcome<Exact> {
  const { tolerance } = rowOf(kind)
  if (tolerance !== undefined) return bad(`${quoted(term.text)} of a ${rowOf(kind).says}`, acceptedText(tolerance))
  const share = exactOfTerm('percent', term)
  if (!share.ok) return share
  // Upwards a share may be any; downwards more than all of it turns the number round. Of a percent it could mean its points.
  if (kind !== 'percent' && term.joint !== '+' && Number(term.digits) > 100)
    return bad(`the tolerance ${quoted(term.text)} takes off more than there is`, 'at most 100 % downwards')
  return good(nominal.size().times(share.value).over(HUNDRED))
}
