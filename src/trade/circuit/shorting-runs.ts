import { closedRuns, type Opened } from './closings.ts'
import { regionsOf } from './regions.ts'
import type { Switching } from './switching.ts'

/** Runs that short a source when all of them are closed, none of them to spare; null where no position does, or the drawn one. */
export function shortingRuns(switching: Switching): readonly string[] | null {
  const { open, switchable } = switching
  if (shortedIn(switching, new Set(open)) > 0 || shortedIn(switching, new Set()) === 0) return null
  const spare = new Set<string>()
  for (const id of switchable) {
    spare.add(id)
    if (shortedIn(switching, spare) === 0) spare.delete(id)
  }
  return switchable.filter(id => !spare.has(id))
}

/** How many sources a position shorts. */
export function shortedIn({ runs, sources }: Switching, position: Opened): number {
  const { region } = regionsOf(closedRuns(runs, position))
  return sources.filter(({ from, to }) => region(from) === region(to)).length
}
