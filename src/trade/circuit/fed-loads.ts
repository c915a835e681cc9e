import type { Opened } from './closings.ts'
import { fewestClosed } from './fewest-closed.ts'
import { loadWay } from './load-way.ts'
import type { Switching } from './switching.ts'

/** Loads that a source drives a current through. */
export function fedLoads(switching: Switching, position: Opened): ReadonlySet<string> {
  return new Set(switching.loads.flatMap(({ name }) => (isFed(switching, position, name) ? [name] : [])))
}

function isFed({ runs, loads, sources }: Switching, position: Opened, load: string): boolean {
  return loadWay({ runs: runs.filter(({ id }) => !position.has(id)), loads }, sources, load) !== null
}

/** Every other run beside it that no load needs then. */
export function alone(switching: Switching, beside: readonly string[], id: string): Opened {
  const open = new Set<string>()
  const fed = fedLoads(switching, open)
  for (const other of beside) {
    if (other === id) continue
    open.add(other)
    const left = fedLoads(switching, open)
    if ([...fed].some(load => !left.has(load))) open.delete(other)
  }
  return open
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
