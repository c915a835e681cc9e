import type { Bounded } from '../formula/bounds.ts'

/**
 * Doubt in what was taken down for a wire thinner than any table prints: none up to what a table prints for such wire where it lies worse,
 * and none where what the wire carries is printed.
 */
export function thinDoubt(currentA: Bounded, carriesA: Bounded, printedA: Bounded | null | undefined): string | null {
  if (printedA == null || printedA.low >= carriesA.low || currentA.high <= printedA.low) return null
  return 'no table prints so thin a wire where it lies like this'
}
