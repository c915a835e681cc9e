import { closings, type Opened } from './closings.ts'
import { isFed } from './fed-loads.ts'
import { leadsBeside } from './leads-beside.ts'
import type { SourceLine } from './load-way.ts'
import { soundIn, unshortedIn } from './sound-position.ts'
import { closedMost } from './starting-positions.ts'
import type { Switching } from './switching.ts'
import { waysAlone } from './ways-alone.ts'

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

/**
 * Positions in which a short may have the least: each with as much closed as can be, sources that are not together as drawn never put
 * together, and from there each way alone of those that lead to it side by side.
 */
export function shortWays(switching: Switching): (at: Ends) => readonly Opened[] {
  const { sources, runs, switchable } = switching
  const starts = sources.length < 2 && soundIn(switching)(NONE) ? [NONE] : closedMost(switching)
  const beside = switchable.filter(id => leadsBeside(switching, id))
  return at =>
    starts
      .filter(start => isFed({ runs, sources, loads: [{ name: SHORT, ...at }] }, start, SHORT))
      .flatMap(start => [start, ...alone(at, start)])

  function alone(at: Ends, start: Opened): readonly Opened[] {
    return waysAlone(switching, beside, { start, line: { id: SHORT, ...at }, loads: [] })
  }
}

const SHORT = 'short'

type Ends = Pick<SourceLine, 'from' | 'to'>
