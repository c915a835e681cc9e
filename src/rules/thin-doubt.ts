import type { Bounded } from '../formula/bounds.ts'

/** Doubt in what was taken down for a wire thinner than any table prints: none up to what a table prints for such wire where it lies worse. */
export function thinDoubt(currentA: Bounded, printedA: Bounded | null | undefined): string | null {
  return printedA == null || currentA.high <= printedA.low ? null : 'no table prints so thin a wire where it lies like this'
}
