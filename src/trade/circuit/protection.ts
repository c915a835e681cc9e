import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { inrushHeld } from './inrush-steps.ts'
import { allowedLoad } from './protection-ambient.ts'
import { breaksA } from './protection-breaking.ts'
import { openingTime } from './protection-opening.ts'
import type { ProtectionStyle, StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { type WireLimitGiven, wireLimit } from './protection-wire-limit.ts'

export interface ProtectionGiven {
  readonly style: StyleId
  readonly ratingA: Given
  readonly loadA: Given
  /** Where the protector sits. */
  readonly ambientC: Given
  readonly wire: Omit<WireLimitGiven, 'kind'>
  readonly inrush: { readonly currentA: Given; readonly timeS: Given } | null
  readonly faultA: Given | null
  /** Printed on the part for the voltage of the bus; null where what is published of its style counts. */
  readonly breakingA: Given | null
}

export const loadPercent = formula('loadPercent', {
  says: 'load over rating',
  symbol: 'p',
  equation: '100·I/In',
  inputs: { loadA: ['I', 0, 5000], ratingA: ['In', 0.1, 1000] },
  source: SOURCES.arithmetic,
  of: ({ loadA, ratingA }) => (100 * loadA) / ratingA
})

export const heldA = formula('heldA', {
  says: 'overload that may flow without end: just below the first gate at which it must open',
  symbol: 'Io',
  equation: 'r·In',
  inputs: { gateRatio: ['r', 1, 10], ratingA: ['In', 0.1, 1000] },
  source: SOURCES.arithmetic,
  of: ({ gateRatio, ratingA }) => gateRatio * ratingA
})

/**
 * One protector against its load, its wire, an inrush and a fault. Times are infinite where it may never open.
 * What was not given, and what is not published, is null.
 */
export function protection(x: Plain<ProtectionGiven>) {
  const { ratingA, loadA, ambientC } = x
  const style = styleOf(x.style)
  const limit = wireLimit({ ...x.wire, kind: style.kind })
  const allowed = allowedLoad(style, { ratingA, ambientC })
  return {
    loadPercent: loadPercent({ loadA, ratingA }),
    allowed,
    limit,
    wireMarginA: limit.wireLimitA === null ? null : limit.wireLimitA - ratingA,
    overload: overloadOf(style, ratingA),
    opening: x.faultA === null ? null : openingTime(style, { currentA: x.faultA, ratingA }),
    inrush: x.inrush === null ? null : inrushHeld(style, ratingA, [{ currentA: x.inrush.currentA, lastsS: x.inrush.timeS }]),
    breakingA: breaksA(style, x)
  }
}

/** The current that is never cleared, and how long the gate current itself may flow: wire and terminals must stand both. */
function overloadOf({ gates }: ProtectionStyle, ratingA: number) {
  const gate = gates.find(gate => gate.longestS !== null)
  if (gate === undefined) return null
  return { heldA: heldA({ gateRatio: gate.overRatio, ratingA }), gateS: gate.longestS! }
}
