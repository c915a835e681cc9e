import type { Opened } from './closings.ts'
import { nothingInVain } from './fewest-closed.ts'
import type { SourceLine } from './load-way.ts'
import { sharingLoop } from './same-loop.ts'
import type { Switching } from './switching.ts'

interface Fed {
  /** How the switches stand. */
  readonly start: Opened
  /** What is fed, a load or a short, and what else its current may flow through. */
  readonly line: SourceLine
  readonly loads: readonly SourceLine[]
  readonly isFed: (opened: Opened) => boolean
}

/** Of ways that lead side by side to what is fed each alone; nothing where no way leads beside another. */
export function waysAlone({ runs, sources }: Switching, beside: readonly string[], { start, line, loads, isFed }: Fed): readonly Opened[] {
  if (beside.length === 0) return []
  const closed = runs.filter(({ id }) => !start.has(id))
  const carries = sharingLoop([...closed, ...loads, ...sources], line)
  const apart = closed.flatMap(run => (beside.includes(run.id) && carries.has(run) ? [run.id] : []))
  return nothingInVain({ most: start, closed: apart, isFed }).filter(({ size }) => size > start.size)
}
