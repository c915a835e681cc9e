import { closedRuns, keyOf, type Opened } from './closings.ts'
import { alone, fedLoads, needed } from './fed-loads.ts'
import { leadsBeside } from './leads-beside.ts'
import { allClosed, mostFed } from './most-closed.ts'
import { sharingLoop } from './same-loop.ts'
import { apart, mostOf, startingPositions } from './starting-positions.ts'
import type { Switching } from './switching.ts'
import { waysAlone } from './ways-alone.ts'

/**
 * The positions besides the drawn one in which something may carry more: where one may start from, each without a run beside which
 * another leads the same way, of such runs and of such ways to a load each alone with all else on that can be, what a load that is off as
 * drawn needs and no more, and sources alone with each other.
 */
export function switchPositions(switching: Switching, starts: readonly Opened[] = startingPositions(switching)): readonly Opened[] {
  const { switchable, sources, open } = switching
  const beside = switchable.filter(id => leadsBeside(switching, id))
  const most = mostOf(starts)
  const drawn = keyOf(new Set(open))
  return apart([
    ...starts,
    ...needed(switching, mostFed(switching, allClosed(switching))),
    ...most.flatMap(start => [...runsAlone(switching, beside, start), ...waysToLoads(switching, beside, start)]),
    ...starts.flatMap(start => beside.map(id => new Set([...start, id]))),
    ...(sources.length < 2 ? [] : starts.map(start => betweenSources(switching, start)))
  ]).filter(position => keyOf(position) !== drawn)
}

function runsAlone(switching: Switching, beside: readonly string[], start: Opened): readonly Opened[] {
  return beside.flatMap(id => (start.has(id) ? [] : [alone(switching, { start, beside, id })]))
}

function waysToLoads(switching: Switching, beside: readonly string[], start: Opened): readonly Opened[] {
  const loads = switching.loads.map(load => ({ ...load, id: load.name }))
  const fed = fedLoads(switching, start)
  return loads
    .filter(({ name }) => fed.has(name))
    .flatMap(line => waysAlone(switching, beside, { start, line, loads: loads.filter(one => one !== line) }))
}

/** Nothing on but what joins sources: one charges the other with what no load takes then. */
function betweenSources({ runs, sources, switchable }: Switching, start: Opened): Opened {
  const lines = [...closedRuns(runs, start), ...sources]
  const joins = new Set(sources.flatMap(source => [...sharingLoop(lines, source)]))
  const kept = new Set(runs.flatMap(run => (joins.has(run) ? [run.id] : [])))
  return new Set([...start, ...switchable.filter(id => !kept.has(id))])
}
