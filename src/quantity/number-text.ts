import { Exact, exactOf } from './exact.ts'

/** What a number may look like: `6.8`, `.375`, `5e-3`, `5/16`, `1-1/4`, `1 1/4`. A point before another one belongs to a range. */
export const NUMBER = /\d+(?:-| )\d+\/\d+|\d+\/\d+|(?:\d+(?:\.(?!\.)\d*)?|\.\d+)(?:e[+-]?\d+)?/i.source

const FRACTION = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/
const EXPONENT = /e([+-]?\d+)$/i

/** No size in this trade has so many noughts: it is a slip of the hand. */
const MOST = 15

/** What is wrong with a number that has the right shape. */
export function numberFault(digits: string): string | undefined {
  const [, whole, top, bottom] = FRACTION.exec(digits) ?? []
  if (bottom !== undefined && /^0+$/.test(bottom)) return 'is a fraction of nought parts'
  if (whole !== undefined && Number(top) >= Number(bottom)) return 'is not a whole number and a proper fraction'
  if (Math.abs(Number(EXPONENT.exec(digits)?.[1] ?? 0)) > MOST) return `has an exponent beyond ${MOST}`
  const size = Math.abs(numberOf(digits))
  if (size > 10 ** MOST) return `is greater than 1e${MOST}`
  if (size < 10 ** -MOST && /[1-9]/.test(digits)) return `is less than 1e-${MOST}`
  return undefined
}

export function exactNumber(digits: string): Exact {
  const fraction = FRACTION.exec(digits)
  if (fraction === null) return exactOf(digits)
  const [, whole = '0', top = '0', bottom = '1'] = fraction
  return new Exact(BigInt(whole)).plus(new Exact(BigInt(top), BigInt(bottom)))
}

export function numberOf(digits: string): number {
  return digits.includes('/') ? exactNumber(digits).valueOf() : Number(digits)
}
