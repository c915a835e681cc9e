import type { Job } from '../../../job/read-job.ts'

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

/** The way to a load and back, over the fewest runs; null where there is none. */
export interface FeedPath {
  readonly feed: readonly Stretch[]
  readonly back: readonly Stretch[]
}

export function feedPath({ runs, source }: Circuit, bus: string, { from, to }: Load): FeedPath | null {
  const feed = shortest(runs, bus, from)
  const back = shortest(runs, to, source.ground)
  return feed === null || back === null ? null : { feed, back }
}

function shortest(runs: Circuit['runs'], start: string, end: string): readonly Stretch[] | null {
  const ways = new Map<string, readonly Stretch[]>([[start, []]])
  const waiting = [start]
  for (const point of waiting) {
    const way = ways.get(point)!
    if (point === end) return way
    for (const next of leaving(runs, point)) {
      if (ways.has(next.to)) continue
      ways.set(next.to, [...way, next])
      waiting.push(next.to)
    }
  }
  return null
}

function leaving(runs: Circuit['runs'], point: string): readonly Stretch[] {
  return runs.flatMap(({ from, to }, run) => [
    ...(from === point ? [{ from, to, run, against: false }] : []),
    ...(to === point ? [{ from: to, to: from, run, against: true }] : [])
  ])
}
