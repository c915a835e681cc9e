import type { Opened } from './closings.ts'
import { regionsOf } from './regions.ts'
import type { Switching } from './switching.ts'

/** Runs that short a source when all of them are closed, none of them to spare; null where no position does, or the drawn one. */
export function shortingRuns(switching: Switching): readonly string[] | null {
  const { open, switchable } = switching
  if (isShorted(switching, new Set(open)) || !isShorted(switching, new Set())) return null
  const spare = new Set<string>()
  for (const id of switchable) {
    spare.add(id)
    if (!isShorted(switching, spare)) spare.delete(id)
  }
  return switchable.filter(id => !spare.has(id))
}

function isShorted({ runs, sources }: Switching, position: Opened): boolean {
  const { region } = regionsOf(runs.filter(({ id }) => !position.has(id)))
  return sources.some(({ from, to }) => region(from) === region(to))
}
