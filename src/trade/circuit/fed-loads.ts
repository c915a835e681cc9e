import { closedRuns, type Opened } from './closings.ts'
import { fewestClosed } from './fewest-closed.ts'
import { loadWay } from './load-way.ts'
import { sharingLoop } from './same-loop.ts'
import type { Switching } from './switching.ts'

/** Loads that a source drives a current through. */
export function fedLoads(switching: Switching, position: Opened): ReadonlySet<string> {
  return new Set(switching.loads.flatMap(({ name }) => (isFed(switching, position, name) ? [name] : [])))
}

/** Whether a source drives a current through a load. */
export function isFed({ runs, loads, sources }: Pick<Switching, 'runs' | 'loads' | 'sources'>, position: Opened, load: string): boolean {
  return loadWay({ runs: closedRuns(runs, position), loads }, sources, load) !== null
}

export interface Beside {
  /** How the switches stand. */
  readonly start: Opened
  /** What another leads beside. */
  readonly beside: readonly string[]
  readonly id: string
}

/** What leads beside it open as well, as far as no load needs it then. */
export function alone(switching: Switching, { start, beside, id }: Beside): Opened {
  const fed = fedLoads(switching, start)
  let open = start
  for (const other of inPlaceOf(switching, { start, beside, id })) {
    const without = new Set([...open, other])
    const left = fedLoads(switching, without)
    if ([...fed].every(load => left.has(load))) open = without
  }
  return open
}

/** On a loop with it that no load is in. */
function inPlaceOf({ runs, sources }: Switching, { start, beside, id }: Beside): readonly string[] {
  const closed = runs.filter(run => !start.has(run.id))
  const run = closed.find(one => one.id === id)!
  const shared = sharingLoop([...closed, ...sources], run)
  return closed.flatMap(one => (one !== run && shared.has(one) && beside.includes(one.id) ? [one.id] : []))
}

/** For each load that is off as drawn: what is drawn open closed, but no more than the load needs; each way that closes the fewest. */
export function needed(switching: Switching, most: Opened): readonly Opened[] {
  const closed = switching.open.filter(id => !most.has(id))
  if (closed.length < 2) return []
  const drawn = fedLoads(switching, new Set(switching.open))
  return [...fedLoads(switching, most)]
    .filter(load => !drawn.has(load))
    .flatMap(load => fewestClosed({ most, closed, isFed: position => isFed(switching, position, load) }))
}
