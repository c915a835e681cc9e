import { acceptedText } from './accepted.ts'
import type { Exact } from './exact.ts'
import { bad, good, type Outcome } from './fault.ts'
import { fillUnits } from './fill-units.ts'
import type { Kind } from './kinds.ts'
import { quoted } from './quoted.ts'
import { exactOfTerm } from './read-term.ts'
import { numberText, type Term } from './scan.ts'

export interface Ends {
  readonly low: Exact
  readonly high: Exact
}

/** `16.0..16.6 mm`, or `16 mm..0.65 in`: each end in the house unit. */
export function readRange(kind: Kind, terms: readonly Term[]): Outcome<Ends> {
  const [from, to] = fillUnits(kind, terms)
  if (to!.unit === '' && from!.unit !== '')
    return bad(`${quoted(to!.text)} has no unit`, acceptedText(kind), `${from!.text}..${to!.text} ${from!.unit}`)
  const low = exactOfTerm(kind, from!)
  if (!low.ok) return low
  const high = exactOfTerm(kind, to!)
  if (!high.ok) return high
  if (low.value.minus(high.value).top > 0n) return turnedFault(terms)
  return good({ low: low.value, high: high.value })
}

function turnedFault([from, to]: readonly Term[]): Outcome<Ends> {
  const [a, b] = [from!.text, to!.text]
  const turned = from!.unit === '' && to!.unit !== '' ? `${numberText(to!)}..${a} ${to!.unit}` : `${b}..${a}`
  return bad(`the ends of ${quoted(`${a}..${b}`)} are the wrong way round`, 'the lower end first', turned)
}
