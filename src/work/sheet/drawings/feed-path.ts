import type { Job } from '../../../job/read-job.ts'
import type { Opened } from '../../../trade/circuit/closings.ts'
import { namedRuns } from '../../job/circuit-wiring.ts'

type Circuit = NonNullable<Job['circuit']>
type Load = Circuit['loads'][number]

/** One stretch of the way of the current: a run of the job, walked from one end to the other. */
export interface Stretch {
  readonly from: string
  readonly to: string
  /** Place in the list of runs. */
  readonly run: number
  /** Walked against the way the job writes it. */
  readonly against: boolean
}

/** The way to a load and back, over the fewest runs that are closed; null where there is none. */
export interface FeedPath {
  readonly feed: readonly Stretch[]
  readonly back: readonly Stretch[]
}

export function feedPath(circuit: Circuit, open: Opened, bus: string, { from, to }: Load): FeedPath | null {
  const ways = namedRuns(circuit).flatMap(({ id, run }, i) => (open.has(id) ? [] : bothWays(run, i)))
  const feed = shortest(ways, bus, from)
  const back = shortest(ways, to, circuit.source.ground)
  return feed === null || back === null ? null : { feed, back }
}

function shortest(stretches: readonly Stretch[], start: string, end: string): readonly Stretch[] | null {
  const ways = new Map<string, readonly Stretch[]>([[start, []]])
  const waiting = [start]
  for (const point of waiting) {
    const way = ways.get(point)!
    if (point === end) return way
    for (const next of stretches) {
      if (next.from !== point || ways.has(next.to)) continue
      ways.set(next.to, [...way, next])
      waiting.push(next.to)
    }
  }
  return null
}

function bothWays({ from, to }: Circuit['runs'][number], run: number): readonly Stretch[] {
  return [
    { from, to, run, against: false },
    { from: to, to: from, run, against: true }
  ]
}
