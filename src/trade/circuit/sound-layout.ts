import { refuseFloating } from './floating-parts.ts'
import { isIdeal, refuseIdealLoops } from './ideal-loops.ts'
import type { PlainElement, PlainNetwork } from './network.ts'
import { hasRow, type Layout, layoutOf } from './network-layout.ts'
import { requireRange, requireSound } from './network-limits.ts'

interface Known {
  readonly network: PlainNetwork
  readonly layout: Layout
}

const MOST = 16
const known: Known[] = []
let oldest = 0

/**
 * The lay-out of a network, once what has no one answer is refused in words. Networks that come one after the other mostly differ by
 * their numbers alone: what hangs on what is then not looked at again.
 */
export function soundLayout(network: PlainNetwork): Layout {
  const alike = known.find(one => areAlike(one.network, network))
  if (alike === undefined) return newLayout(network)
  for (const element of network.elements) requireRange(element)
  return alike.layout
}

function newLayout(network: PlainNetwork): Layout {
  requireSound(network)
  refuseFloating(network)
  refuseIdealLoops(network)
  const layout = layoutOf(network)
  known[oldest] = { network, layout }
  oldest = (oldest + 1) % MOST
  return layout
}

function areAlike(one: PlainNetwork, other: PlainNetwork): boolean {
  if (one.ground !== other.ground || one.elements.length !== other.elements.length) return false
  for (let i = 0; i < one.elements.length; i++) if (!isAlike(one.elements[i]!, other.elements[i]!)) return false
  return true
}

/** But for numbers that make no difference to what is an unknown, and to what has no resistance. */
function isAlike(one: PlainElement, other: PlainElement): boolean {
  if (one === other) return true
  if (one.id !== other.id || one.kind !== other.kind || one.from !== other.from || one.to !== other.to) return false
  return hasRow(one) === hasRow(other) && isIdeal(one) === isIdeal(other)
}
