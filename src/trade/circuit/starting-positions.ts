import { closings, keyOf, type Opened, without } from './closings.ts'
import { allClosed, leavesFedIn } from './most-closed.ts'
import { soundIn, turnedIn } from './sound-position.ts'
import type { Switching } from './switching.ts'

/**
 * How the switches may stand before one of them is opened: as they are drawn, and with what is drawn open closed, together and each
 * alone, also with what must be open for that, as where two in series are put in parallel. A position that puts sources together
 * which are not together as drawn is none.
 */
export function startingPositions(switching: Switching): readonly Opened[] {
  const drawn = new Set(switching.open)
  if (drawn.size === 0) return [drawn]
  const alone = switching.open.map(id => without(drawn, id)).filter(soundIn(switching))
  return apart([drawn, ...allClosed(switching), ...insteadOf(switching), ...alone])
}

/** Of those the drawn one, and each in which nothing is open that is closed in another with all else as it is. */
export function closedMost(switching: Switching): readonly Opened[] {
  const [drawn, ...others] = startingPositions(switching)
  return [drawn!, ...mostOf(others)]
}

/** None that has no more closed than another has. */
export function mostOf(positions: readonly Opened[]): readonly Opened[] {
  return positions.filter(one => !positions.some(other => other.size < one.size && [...other].every(id => one.has(id))))
}

/** Each once. */
export function apart(positions: readonly Opened[]): readonly Opened[] {
  return [...new Map(positions.map(position => [keyOf(position), position])).values()]
}

/**
 * What is drawn open closed before anything else: what would short a source then is open, or, of several loads, what cuts one off.
 * Nothing where that turns a load round.
 */
function insteadOf(switching: Switching): readonly Opened[] {
  const { open, switchable } = switching
  const order = [...open, ...switchable.filter(id => !open.includes(id))]
  const start = new Set(order)
  const [isSound, leavesFed] = [soundIn(switching), leavesFedIn(switching)]
  const drawn = turnedIn(switching, new Set(open))
  return [
    ...closings({ start, order, isSound }),
    ...closings({ start, order, isSound: (position, before) => isSound(position) && leavesFed(position, before) })
  ].filter(position => ![...turnedIn(switching, position)].some(([load, turned]) => drawn.has(load) && drawn.get(load) !== turned))
}
