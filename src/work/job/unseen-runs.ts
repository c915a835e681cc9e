import { sharingLoop } from '../../trade/circuit/same-loop.ts'
import type { Switching } from '../../trade/circuit/switching.ts'

interface Seen {
  /** What is drawn open and closed in no position that was looked at. */
  readonly never: readonly string[]
  /** Whether a run carries anything in a position that was looked at. */
  readonly carried: (id: string) => boolean
}

/** Each run whose current nobody knows, with what stays open in it or in series with it: nothing else ever sends a current through it. */
export function unseenRuns({ runs, loads, sources }: Switching, { never, carried }: Seen): ReadonlyMap<string, string> {
  const lines = [...runs, ...sources, ...loads.map(load => ({ ...load, id: load.name }))]
  const behind = never.flatMap(id => {
    const shared = sharingLoop(lines, runs.find(run => run.id === id)!)
    return runs.flatMap(run => (shared.has(run) && !carried(run.id) ? [[run.id, id] as const] : []))
  })
  return new Map([...behind, ...never.map(id => [id, id] as const)])
}
