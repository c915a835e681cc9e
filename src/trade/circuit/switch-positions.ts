import { closings, keyOf, type Opened, without } from './closings.ts'
import { alone, fedLoads, isFed, needed } from './fed-loads.ts'
import { leadsBeside } from './leads-beside.ts'
import { allClosed, leavesFedIn, mostFed } from './most-closed.ts'
import { sharingLoop } from './same-loop.ts'
import { soundIn, turnedIn } from './sound-position.ts'
import type { Switching } from './switching.ts'
import { waysAlone } from './ways-alone.ts'

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

function mostOf(positions: readonly Opened[]): readonly Opened[] {
  return positions.filter(one => !positions.some(other => other.size < one.size && [...other].every(id => one.has(id))))
}

/**
 * The positions besides the drawn one in which something may carry more: where one may start from, each without a run beside which
 * another leads the same way, of such runs and of such ways to a load each alone, with all else on that can be, what a load that is off as drawn needs and no more, and
 * sources alone with each other.
 */
export function switchPositions(switching: Switching, starts: readonly Opened[] = startingPositions(switching)): readonly Opened[] {
  const beside = switching.switchable.filter(id => leadsBeside(switching, id))
  const alones = mostOf(starts).flatMap(start => [...aloneFrom(start), ...waysFrom(start)])
  const off = starts.flatMap(start => beside.map(id => new Set([...start, id])))
  const drawn = keyOf(new Set(switching.open))
  const charging = switching.sources.length < 2 ? [] : starts.map(start => betweenSources(switching, start))
  return apart([...starts, ...needed(switching, mostFed(switching, allClosed(switching))), ...alones, ...off, ...charging]).filter(
    position => keyOf(position) !== drawn
  )

  function aloneFrom(start: Opened): readonly Opened[] {
    return beside.flatMap(id => (start.has(id) ? [] : [alone(switching, { start, beside, id })]))
  }

  function waysFrom(start: Opened): readonly Opened[] {
    const loads = switching.loads.map(load => ({ ...load, id: load.name }))
    return [...fedLoads(switching, start)].flatMap(name => {
      const line = loads.find(load => load.name === name)!
      return waysAlone(switching, beside, { start, line, loads, isFed: opened => isFed(switching, opened, name) })
    })
  }
}

/** Nothing on but what joins sources: one charges the other with what no load takes then. */
function betweenSources({ runs, sources, switchable }: Switching, start: Opened): Opened {
  const lines = [...runs.filter(({ id }) => !start.has(id)), ...sources]
  const joins = new Set(sources.flatMap(source => [...sharingLoop(lines, source)]))
  const kept = new Set(runs.flatMap(run => (joins.has(run) ? [run.id] : [])))
  return new Set([...start, ...switchable.filter(id => !kept.has(id))])
}

function apart(positions: readonly Opened[]): readonly Opened[] {
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
