import type { Wiring } from './guarding.ts'
import { valvesTo } from './least-cut.ts'
import { liveEnds } from './live-ends.ts'

/** Where the protector of a run sits: at one of its ends, or nobody said. */
export type Seat = 'from' | 'to' | 'unsaid'

/** A run with a protector: the rating of its smallest, and where that sits. */
export interface Guard {
  readonly ratingA: number
  readonly seat: Seat
}

/** What protects is told by run. */
export type GuardsByRun = ReadonlyMap<string, Guard>

/**
 * Runs with protectors that all current to a point passes, side by side: as much as they let through together may flow there, and
 * of all such sets the one with the least sum of ratings. Null where a way leads there without any; none where no source leads there.
 */
export type Feeders = readonly string[] | null

/** What feeds a run at one of its ends. */
export interface FedAt {
  readonly end: 'from' | 'to'
  readonly by: Feeders
}

/** More than any that is made: of unknown rating, it is counted on only where there is no other. */
const UNKNOWN_A = 1e6
/** No point has this name. */
const START = ''

/** What feeds a point, from every source that the circuit has. */
export function feedersOf(wiring: Wiring, guards: GuardsByRun, point: string, without?: string): Feeders {
  const { ground } = wiring
  if (point === ground) return []
  const runs = wiring.runs.filter(({ id, from, to }) => id !== without && from !== ground && to !== ground)
  const starts = liveEnds(wiring).map(to => ({ id: START, from: START, to }))
  const ties = [...starts, ...runs.filter(({ protects }) => protects === 'no')]
  const valves = runs
    .filter(({ protects }) => protects === 'yes')
    .map(({ id, from, to }) => ({ id, from, to, limitA: guards.get(id)?.ratingA ?? UNKNOWN_A }))
  return valvesTo(valves, ties, START, point)
}

/** What feeds the ends of a run from outside: at one, or at both. */
export function fedBefore(wiring: Wiring, guards: GuardsByRun, run: Wiring['runs'][number]): readonly FedAt[] {
  return (['from', 'to'] as const).flatMap(end => {
    const by = feedersOf(wiring, guards, run[end], run.id)
    return by !== null && by.length === 0 ? [] : [{ end, by }]
  })
}

/** What feeds its wire. Its own protector holds what comes in at the end that it sits at; where only one end is fed, wherever it sits. */
export function fedAt(guards: GuardsByRun, run: Wiring['runs'][number], ends: readonly FedAt[]): readonly FedAt[] {
  if (run.protects === 'no') return ends
  const seat = guards.get(run.id)?.seat ?? 'unsaid'
  return ends.map(fed => (ends.length === 1 || seat === 'unsaid' || seat === fed.end ? { ...fed, by: smaller([run.id], fed.by) } : fed))

  function smaller(own: readonly string[], before: Feeders): Feeders {
    return before === null || sumA(own) <= sumA(before) ? own : before
  }

  function sumA(ids: readonly string[]): number {
    return ids.reduce((sum, id) => sum + (guards.get(id)?.ratingA ?? UNKNOWN_A), 0)
  }
}
