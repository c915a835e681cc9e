import { PROTECTOR_PLACES } from '../trade/circuit/protection-place.ts'
import { offSeries, styleOf } from '../trade/circuit/protection-styles.ts'
import type { ProtectorWish } from '../trade/circuit/protector-choice.ts'
import { figureOf } from '../trade/circuit/wire-choice.ts'
import { warmsOtherwise } from '../work/results/wire-results.ts'
import type { Found } from './protect-findings.ts'
import type { ProtectWords } from './protect-words.ts'

export function cautionsOf(
  { style, practice, sheathed, inrush, fault, plot }: ProtectWords,
  r: Found,
  wish: ProtectorWish
): readonly string[] {
  const place = PROTECTOR_PLACES[practice][sheathed ? 'sheathed' : 'open']
  const odd = offSeries(style, r.ratingA.value)
  return [
    `wire: ${r.limit.says}`,
    ...warmsOtherwise(figureOf(wish)).map(says => `wire: ${says}`),
    ...(odd === null ? [] : [odd]),
    `opening times: ${styleOf(style).gatesSays}`,
    `place: ${place.says}`,
    ...(inrush === null
      ? ['without --inrush nothing is said of switch-on: a ceramic heater takes two to three times its current for seconds']
      : []),
    ...(fault === null ? ['without --fault nothing is said of a short: give the current of one at the far end, bus low and wire hot'] : []),
    ...(fault === null ? [] : ['right behind the protector a short is larger than at the far end: judge what it can break with that one']),
    ...(plot && styleOf(style).gates.length === 0 ? ['nothing is drawn: no opening times are published for this style'] : []),
    ...(r.contacts === null ? [] : r.contacts.says),
    "the maker's sheet of the part in hand, local codes and a licensed electrician go before this"
  ]
}
