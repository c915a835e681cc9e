import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { type Amount, parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import { type Points, readPoints } from './points.ts'
import { OVER_OHM } from './probed-circuit.ts'
import { beyondShown, type Takes } from './reading-unit.ts'

/** A reading as it was typed on one line. */
export interface TypedReading extends Points {
  readonly takes: Takes
  readonly amount: Amount
  readonly passingA: number | null
  readonly text: string
}

const ACCEPTED =
  'points and a reading, as "left+ TO left-=26.4 V", "left+ TO left-=1.9 A", "left+ TO left-=13.1 ohm" or "left- TO chassis=22 mV @ 10 A"'

/** `left+ TO left-=26.4 V`; a millivolt test names its current behind `@`. */
export function readReading(text: string, known: readonly string[]): Outcome<TypedReading> {
  const equals = text.lastIndexOf('=')
  if (equals < 0) return bad(`${quoted(text)} without a reading`, ACCEPTED)
  if (text.slice(0, equals).trim() === '') return bad(`${quoted(text)} without the points it was read at`, ACCEPTED)
  const points = readPoints(text.slice(0, equals), known)
  if (!points.ok) return points
  const shown = shownOf(text.slice(equals + 1))
  if (!shown.ok) return shown
  const fault = beyondShown(shown.value.takes, shown.value.amount.value)
  return fault === undefined ? good({ ...points.value, ...shown.value, text }) : { ok: false, fault }
}

type Shown = Pick<TypedReading, 'takes' | 'amount' | 'passingA'>

function shownOf(text: string): Outcome<Shown> {
  const [first, current, ...more] = text.split(/@|\bat\b/)
  const amount = amountOf(first!.trim())
  if (!amount.ok || current === undefined) return amount
  const passing = parseQuantity('current', current.trim())
  if (!passing.ok) return passing
  if (more.length > 0 || amount.value.takes !== 'volts') return bad(quoted(text.trim()), 'volts at one known current, as "22 mV @ 10 A"')
  if (!(passing.value.value > 0)) return bad(`a test current of ${quoted(current.trim())}`, 'a current above 0 A')
  return good({ ...amount.value, passingA: passing.value.value })
}

/** The unit says what was measured. */
function amountOf(text: string): Outcome<Shown> {
  for (const [takes, kind] of [
    ['volts', 'voltage'],
    ['amps', 'current']
  ] as const) {
    const amount = parseQuantity(kind, text)
    if (amount.ok) return good({ takes, amount: amount.value, passingA: null })
  }
  const ohms = readReadingOhm(text)
  if (ohms.ok) return good({ takes: 'ohms', amount: ohms.value, passingA: null })
  return bad(`${quoted(text)}, which is no volts, amps or ohms`, ACCEPTED)
}

/** Ohms, or the sign of a meter that finds no end. */
export function readReadingOhm(text: string): Outcome<Amount> {
  if (/^0?[O0]\.?L$/i.test(text.trim())) return good({ value: OVER_OHM, low: OVER_OHM, high: OVER_OHM, text })
  const amount = parseQuantity('resistance', text)
  if (!amount.ok) return amount
  const { value, low, high } = amount.value
  return value < 0 ? bad(quoted(text), 'a resistance of 0 ohm or more') : good({ value: Math.min(OVER_OHM, value), low, high, text })
}
