import type { Given, Plain } from '../../formula/given.ts'
import { heldA } from './protection.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { type HeatedWireGiven, overloadHeating } from './short-heating-end.ts'

export interface BandHeatingGiven {
  readonly style: StyleId
  readonly ratingA: Given
  readonly wire: HeatedWireGiven
  readonly startC: Given
  /** No limit between 5 s and for good is published: the rating of the insulation is the cautious one. */
  readonly limitC: Given
}

/**
 * How hot a wire gets behind its protector: at the overload that is never cleared, and at each gate for as long as the slow edge
 * lets it flow. Null where the style has no gate at which it must open.
 */
export function bandHeating({ style, ratingA, wire, startC, limitC }: Plain<BandHeatingGiven>) {
  const gates = styleOf(style).gates.filter(gate => gate.longestS !== null)
  if (gates.length === 0) return null
  const at = (gateRatio: number, timeS: number) => {
    const currentA = heldA({ gateRatio, ratingA })
    return { currentA, endC: overloadHeating({ wire, currentA, startC, timeS, limitC }).endC }
  }
  const held = at(gates[0]!.overRatio, Number.POSITIVE_INFINITY)
  const cleared = gates.map(gate => ({ timeS: gate.longestS!, ...at(gate.overRatio, gate.longestS!) }))
  const worstC = Math.max(held.endC, ...cleared.map(({ endC }) => endC))
  return { held, cleared, worstC, marginK: limitC - worstC }
}
