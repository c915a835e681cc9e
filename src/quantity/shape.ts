import { numberOf } from './number-text.ts'
import type { Term } from './scan.ts'

/** What terms make together, told by the signs between them. */
export function shapeOf(terms: readonly Term[]): 'plain' | 'range' | 'tolerance' | 'one side' | 'none' {
  switch (terms.map(({ joint }) => joint).join('')) {
    case '':
      return terms.length === 1 ? 'plain' : 'none'
    case '..':
      return 'range'
    case '±':
    case '+-':
    case '-+':
      return 'tolerance'
    case '+':
    case '-':
      return 'one side'
    default:
      return 'none'
  }
}

/** `5-25 N·m`: what stands after the hyphen is greater, so a range was meant. */
export function likelyRange([first, second, ...more]: readonly Term[]): string | undefined {
  if (second?.joint !== '-' || more.length > 0 || numberOf(second.digits) <= numberOf(first!.digits)) return undefined
  return `${first!.text}..${second.digits}${tailOf(second)}`
}

/** `17 mm -0.2 mm` with its other side written out. */
export function bothSides([first, second]: readonly Term[]): string {
  const tail = tailOf(second!)
  const size = `${second!.digits}${tail}`
  return second!.joint === '+' ? `${first!.text} +${size} -0${tail}` : `${first!.text} +0${tail} -${size}`
}

function tailOf({ unit }: Term): string {
  return unit && ` ${unit}`
}
