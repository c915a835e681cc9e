import { reached, type Wiring } from './guarding.ts'
import { spread } from './spread.ts'

/** What comes back through the threads of a part, which seal, oxidise and work loose. */
export interface ByThreads {
  /** Runs of threads that are beside another way, and counted open. */
  readonly open: ReadonlySet<string>
  /** Loads that no current comes back from when no threads conduct, with the runs of threads that they hang on. */
  readonly loads: readonly { readonly name: string; readonly runs: readonly string[] }[]
}

/**
 * Threads are never counted on. All of them are taken out at once: two such joints side by side are no more than one.
 * Those that alone lead to a point stay in, so that it has a voltage; what hangs on them is named.
 */
export function byThreads(wiring: Wiring, threads: readonly string[]): ByThreads {
  if (threads.length === 0) return NONE
  const sound = wiring.runs.filter(({ id }) => !threads.includes(id))
  const [withThreads, without] = [joinedBy(wiring, wiring.runs), joinedBy(wiring, sound)]
  const beside = wiring.runs.filter(({ id, from, to }) => threads.includes(id) && without.has(from) && without.has(to))
  const loads = wiring.loads.flatMap(({ name, from, to }) => {
    const cut = [from, to].filter(point => withThreads.has(point) && !without.has(point))
    if (cut.length === 0) return []
    const around = new Set(cut.flatMap(point => [...spread(point, sound)]))
    const runs = wiring.runs.filter(run => threads.includes(run.id) && (around.has(run.from) || around.has(run.to)))
    return [{ name, runs: runs.map(({ id }) => id) }]
  })
  return { open: new Set(beside.map(({ id }) => id)), loads }
}

const NONE: ByThreads = { open: new Set(), loads: [] }

/** Points that runs join to the bus or to the 0 V node. */
function joinedBy({ bus, ground }: Wiring, runs: Wiring['runs']): ReadonlySet<string> {
  return new Set([...reached(bus, ground, runs), ...reached(ground, bus, runs)])
}
