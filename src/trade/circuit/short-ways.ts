import { closings, keyOf, type Opened } from './closings.ts'
import { nothingInVain } from './fewest-closed.ts'
import { leadsBeside } from './leads-beside.ts'
import { soundIn, unshortedIn } from './sound-position.ts'
import { closedMost } from './switch-positions.ts'
import type { Switching } from './switching.ts'

/**
 * Positions in which most flows into a short: all closed that can be without a source shorted. Two sources may be together, as a relay
 * that joins them, or a selector turned to both, does so for a moment at least.
 */
export function closedTogether(switching: Switching): readonly Opened[] {
  const isSound = unshortedIn(switching)
  if (isSound(NONE)) return [NONE]
  const order = [...switching.open, ...switching.switchable.filter(id => !switching.open.includes(id))]
  return closings({ start: new Set(order), order, isSound })
}

const NONE: Opened = new Set()

/** Positions in which a short may have the least: each as much closed as can be, and from there each way alone of those that lead side by side. */
export interface ShortWays {
  /** Sources that are not together as drawn are never put together. */
  readonly starts: readonly Opened[]
  readonly from: (start: Opened, isFed: (position: Opened) => boolean) => readonly Opened[]
}

export function shortWays(switching: Switching): ShortWays {
  const { sources, switchable } = switching
  const starts = sources.length < 2 && soundIn(switching)(NONE) ? [NONE] : closedMost(switching)
  const beside = switchable.filter(id => leadsBeside(switching, id))
  return { starts, from: (start, isFed) => [start, ...(beside.length === 0 ? [] : alone(start, beside, isFed))] }
}

/** What is open in every way leads nowhere near the short: it stays as it is. */
function alone(start: Opened, beside: readonly string[], isFed: (position: Opened) => boolean): readonly Opened[] {
  const ways = nothingInVain({ most: start, closed: beside.filter(id => !start.has(id)), isFed })
  const apart = beside.filter(id => !ways.every(way => way.has(id)))
  const opened = ways.map(way => new Set([...start, ...apart.filter(id => way.has(id))]))
  return [...new Map(opened.map(one => [keyOf(one), one])).values()].filter(({ size }) => size > start.size)
}
