import type { Digits } from './digits.ts'

/** Binary noise: 22.2 may come as 22.199999999999996, and rounded down it is still 22.20. */
const NOISE = 1e-9
/** In the last digit printed: more is no noise. */
const MOST_NOISE = 1e-3

/** A number as text, with the digits and to the side that are asked for. */
export function rounded(value: number, digits: Digits): string {
  const places = placesOf(value, digits)
  const text = atPlaces(value, places, digits.side)
  const crossed = digits.significant !== undefined && placesOf(Number(text), digits) < places
  return tidy(crossed ? atPlaces(value, places - 1, digits.side) : text, digits)
}

/** How many digits after the point; below nought, how many noughts before it. */
function placesOf(value: number, { decimals, significant }: Digits): number {
  const least = decimals ?? Number.NEGATIVE_INFINITY
  if (significant === undefined || Math.abs(value) < NOISE) return decimals ?? 0
  return Math.max(least, significant - 1 - exponentOf(Math.abs(value)))
}

/** From the least that is no noise to more than is ever printed in full. */
const LEAST_EXPONENT = -9
const MOST_EXPONENT = 16
/** As they are written: worked out, some would be a bit off. */
const TENS = Array.from({ length: MOST_EXPONENT - LEAST_EXPONENT + 1 }, (_, i) => Number(`1e${i + LEAST_EXPONENT}`))

/** The power of ten that a number begins with: 2 for 123.4. */
function exponentOf(size: number): number {
  let i = TENS.length - 1
  while (i > 0 && size < TENS[i]!) i--
  return i + LEAST_EXPONENT
}

function atPlaces(value: number, places: number, side: Digits['side']): string {
  const scaled = places < 0 ? value / 10 ** -places : value * 10 ** places
  const whole = wholeOf(scaled, side)
  return places < 0 ? (whole * 10 ** -places).toFixed(0) : (whole / 10 ** places).toFixed(places)
}

function wholeOf(scaled: number, side: Digits['side']): number {
  const noise = Math.min(NOISE * Math.max(1, Math.abs(scaled)), MOST_NOISE)
  if (side === 'down') return Math.floor(scaled + noise)
  if (side === 'up') return Math.ceil(scaled - noise)
  return Math.sign(scaled) * Math.floor(Math.abs(scaled) + 0.5 + noise)
}

/** Nought has no sign. */
function tidy(text: string, { trim }: Digits): string {
  const short = trim === true && text.includes('.') ? text.replace(/\.?0+$/, '') : text
  return short.startsWith('-') && !/[1-9]/.test(short) ? short.slice(1) : short
}
