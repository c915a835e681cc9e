import type { Given, Plain } from '../../formula/given.ts'
import { heldA } from './protection.ts'
import { leastHeldA } from './protection-ambient.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { type HeatedWireGiven, overloadHeating } from './short-heating-end.ts'

export interface BandHeatingGiven {
  readonly style: StyleId
  readonly ratingA: Given
  /** Where the protector sits. */
  readonly placeC: Given
  readonly wire: HeatedWireGiven
  readonly startC: Given
  /** No limit between 5 s and for good is published: the rating of the insulation is the cautious one. */
  readonly limitC: Given
}

/**
 * How hot a wire gets behind its protector: at the overload that is never cleared, and at each gate for as long as the slow edge
 * lets it flow. Of a style without a gate at which it must open, the least that it holds is taken, and the end is told to be unknown.
 */
export function bandHeating({ style: id, ratingA, placeC, wire, startC, limitC }: Plain<BandHeatingGiven>) {
  const style = styleOf(id)
  const gates = style.gates.filter(gate => gate.longestS !== null)
  const at = (currentA: number, timeS: number) => ({ currentA, endC: overloadHeating({ wire, currentA, startC, timeS, limitC }).endC })
  const first = gates[0]
  const forGoodA = first === undefined ? leastHeldA(style, { ratingA, ambientC: placeC }) : heldA({ gateRatio: first.overRatio, ratingA })
  const held = at(forGoodA, Number.POSITIVE_INFINITY)
  const cleared = gates.map(gate => ({ timeS: gate.longestS!, ...at(heldA({ gateRatio: gate.overRatio, ratingA }), gate.longestS!) }))
  const worstC = Math.max(held.endC, ...cleared.map(({ endC }) => endC))
  return { held, cleared, worstC, marginK: limitC - worstC, edge: first === undefined ? ('unknown' as const) : ('published' as const) }
}

/** The worst of it alone, for a rule to judge. */
export function overloadedTo(x: Plain<BandHeatingGiven>) {
  const { held, worstC, edge } = bandHeating(x)
  return { overloadC: worstC, heldA: held.currentA, edge }
}
