import { closedRuns, type Opened } from './closings.ts'
import { isFed } from './fed-loads.ts'
import { nothingInVain } from './fewest-closed.ts'
import type { SourceLine } from './load-way.ts'
import { sharingLoop } from './same-loop.ts'
import type { Switching } from './switching.ts'

interface Fed {
  /** How the switches stand. */
  readonly start: Opened
  /** What is fed, a load or a short, and other loads that its current may flow through. */
  readonly line: SourceLine
  readonly loads: readonly SourceLine[]
}

/** Of ways that lead side by side to what is fed each alone, from each source that feeds it; nothing where no way leads beside another. */
export function waysAlone(switching: Switching, beside: readonly string[], { start, line, loads }: Fed): readonly Opened[] {
  if (beside.length === 0) return []
  const { runs, sources } = switching
  const closed = closedRuns(runs, start)
  const named = [...loads, line].map(one => ({ ...one, name: one.id }))
  const feeding = sources.filter(source => isFedBy(start, source))
  const isFedAlike = (opened: Opened) => feeding.every(source => isFedBy(opened, source))
  const carries = sharingLoop([...closed, ...loads, ...sources], line)
  const apart = closed.flatMap(run => (beside.includes(run.id) && carries.has(run) ? [run.id] : []))
  return nothingInVain({ most: start, closed: apart, isFed: isFedAlike }).filter(({ size }) => size > start.size)

  function isFedBy(opened: Opened, source: SourceLine): boolean {
    return isFed({ runs, loads: named, sources: [source] }, opened, line.id)
  }
}
