import type { Given } from '../../formula/given.ts'

// Lengths that cannot be those of one part, or of one stack, in words; null where they can.

export function shortPart(overallMm: Given, threadLengthMm: Given): string | null {
  return overallMm.high < threadLengthMm.low ? 'a part that ends before its thread does' : null
}

export function crushedAway(crushMm: Given, stack: readonly Given[]): string | null {
  const thickestMm = stack.reduce((sum, { high }) => sum + high, 0)
  return crushMm.low > thickestMm ? 'a stack that loses more than it has' : null
}
