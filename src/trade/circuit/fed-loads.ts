import type { Opened } from './closings.ts'
import { loadWay } from './load-way.ts'
import type { Switching } from './switch-positions.ts'

/** Loads that a source drives a current through. */
export function fedLoads({ runs, loads, sources }: Switching, position: Opened): ReadonlySet<string> {
  const closed = runs.filter(({ id }) => !position.has(id))
  return new Set(loads.flatMap(({ name }) => (loadWay({ runs: closed, loads }, sources, name) === null ? [] : [name])))
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

/** For each load that is off as drawn: of what is closed where most is, what is drawn open opened again, but what the load needs. */
export function needed(switching: Switching, most: Opened): readonly Opened[] {
  if (switching.open.length < 2) return []
  const drawn = fedLoads(switching, new Set(switching.open))
  return [...fedLoads(switching, most)].filter(load => !drawn.has(load)).map(load => neededBy(switching, most, load))
}

function neededBy(switching: Switching, most: Opened, load: string): Opened {
  const open = new Set(most)
  for (const id of switching.open) {
    if (most.has(id)) continue
    open.add(id)
    if (!fedLoads(switching, open).has(load)) open.delete(id)
  }
  return open
}
