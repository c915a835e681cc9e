import { DIGITS, type Digits, type Shown } from './digits.ts'
import { rounded } from './round.ts'
import { MM_PER_IN } from './units.ts'

/** Beyond these, numbers are no sizes of this trade: only they are printed with an exponent. */
const HUGE = 1e15
const TINY = 1e-9

/** A figure as the trade prints it. */
export function showNumber(value: number, shown: Shown): string {
  return showWith(value, DIGITS[shown])
}

/** A hair apart at most: nobody could tell them apart. */
const SAME = 1e-9
const MOST_EXTRA = 6

/** Two figures that are held against each other, with as many digits more as it takes to see which is the larger. */
export function showApart(a: number, b: number, shown: Shown, extra = 0): readonly [string, string] {
  const digits = extra === 0 ? DIGITS[shown] : finer(DIGITS[shown], extra)
  const both = [showWith(a, digits), showWith(b, digits)] as const
  const same = both[0] === both[1] && Math.abs(a - b) > SAME * Math.max(1, Math.abs(b))
  return same && extra < MOST_EXTRA ? showApart(a, b, shown, extra + 1) : both
}

function finer({ decimals, significant, ...digits }: Digits, extra: number): Digits {
  return {
    ...digits,
    ...(decimals === undefined ? {} : { decimals: decimals + extra }),
    ...(significant === undefined ? {} : { significant: significant + extra })
  }
}

/** Two ends, rounded outward: what is printed holds what is meant. */
export function showSpread(low: number, high: number, shown: Shown): string {
  const from = showWith(low, { ...DIGITS[shown], side: 'down' })
  const to = showWith(high, { ...DIGITS[shown], side: 'up' })
  return from === to ? from : `${from} to ${to}`
}

/** Millimetres in inches, without the unit. */
export function inchOf(mm: number, shown: 'inch' | 'inch-down' | 'inch-up' = 'inch'): string {
  return showNumber(mm / MM_PER_IN, shown)
}

/** `10.50 mm (0.4134 in)`: where a shop uses both. A side of rounding holds for both. */
export function showMetricAndInch(mm: number, shown: Shown): string {
  const { side } = DIGITS[shown]
  return `${showNumber(mm, shown)} mm (${inchOf(mm, side === 'nearest' ? 'inch' : `inch-${side}`)} in)`
}

/** `-5.0 °C (23.0 °F)`. */
export function showBothTemperatures(celsius: number): string {
  return `${showNumber(celsius, 'temperature')} °C (${showNumber(celsius * 1.8 + 32, 'temperature')} °F)`
}

function showWith(value: number, digits: Digits): string {
  if (!Number.isFinite(value)) throw new RangeError('something that is no number came to be printed')
  const size = Math.abs(value)
  if (size >= HUGE || (size > 0 && size < TINY && digits.decimals === undefined)) return value.toExponential(2)
  return rounded(value, digits)
}
