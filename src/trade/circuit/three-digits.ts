/** A number as a sentence wants it: three digits, rounded to the side on which the sentence stays true. */
export function threeDigits(number: number, side: 'near' | 'up' | 'down' = 'near'): string {
  if (number === 0 || side === 'near') return String(Number(number.toPrecision(3)))
  const step = 10 ** (Math.floor(Math.log10(Math.abs(number))) - 2)
  const steps = side === 'up' ? Math.ceil(number / step) : Math.floor(number / step)
  return String(Number((steps * step).toPrecision(3)))
}
