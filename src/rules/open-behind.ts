import type { Bounded } from '../formula/bounds.ts'
import { METAL_BELOW } from '../trade/hole/depth.ts'
import { atLeast, figure } from './judge.ts'
import type { Judged } from './rule.ts'

/** A stop that keeps clear of the old bottom helps nothing where there may be no metal below it. */
export function openBehind(metalBelowMm: Bounded): Judged | undefined {
  const { low } = metalBelowMm
  if (low > 0) return undefined
  const says = `the old hole may be open behind: ${METAL_BELOW.says} ${figure(low, METAL_BELOW)} at the worst end`
  const change = 'measure the metal below closer, or choose another place'
  return { ...atLeast(METAL_BELOW, metalBelowMm, { value: 0 }, says), change }
}
