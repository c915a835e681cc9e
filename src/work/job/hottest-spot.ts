import type { Bounded } from '../../formula/bounds.ts'
import { hottestPart } from '../results/hottest-part.ts'

/** The hottest heated part; the casting, where none is told apart. */
export function hottestSpot({ steadyC, bodiesC }: { readonly steadyC: Bounded; readonly bodiesC: readonly Bounded[] }): Bounded {
  return hottestPart(bodiesC) ?? steadyC
}
