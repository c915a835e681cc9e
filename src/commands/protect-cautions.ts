import { PROTECTOR_PLACES } from '../trade/circuit/protection-place.ts'
import type { StyleId } from '../trade/circuit/protection-style.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import type { Found } from './protect-findings.ts'
import type { ProtectWords } from './protect-words.ts'

/** What is on a mark and in no series is often misread. */
function offSeries(id: StyleId, ratingA: number): readonly string[] {
  const { says, ratingsA } = styleOf(id)
  if (ratingsA.length === 0 || ratingsA.includes(ratingA)) return []
  return [`no ${says} of ${ratingA} A stands in the series: ${ratingsA.join(', ')} A`]
}

export function cautionsOf({ style, practice, sheathed, inrush, fault, plot }: ProtectWords, r: Found): readonly string[] {
  const place = PROTECTOR_PLACES[practice][sheathed ? 'sheathed' : 'open']
  return [
    `wire: ${r.limit.says}`,
    ...offSeries(style, r.ratingA.value),
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
