import { type FedAt, type Feeders, fedAt, fedBefore, feedersOf, type Guard, type Seat } from '../../trade/circuit/fed-by.ts'
import { loadGuards, type Wiring } from '../../trade/circuit/guarding.ts'
import { loadWay } from '../../trade/circuit/load-way.ts'
import type { RatedProtector } from './circuit-guards.ts'

/** Protectors side by side: as much as all of them let through may flow in what they feed. */
export interface Group {
  readonly protectors: readonly RatedProtector[]
  /** Runs with a protector of which rating or style is not given. */
  readonly unknown: readonly string[]
}

export interface GroupAt {
  readonly end: 'from' | 'to'
  /** Null where a way without any leads there. */
  readonly group: Group | null
}

export interface FeedingGroups {
  /** For every run that sources feed without a load between, by its end. */
  readonly runs: ReadonlyMap<string, readonly GroupAt[]>
  /** What lets current to the ends of a run from outside, its own protector left out. */
  readonly before: ReadonlyMap<string, readonly GroupAt[]>
  /** For every load: what lets its current through. Null where nothing does. */
  readonly loads: ReadonlyMap<string, Group | null>
}

export function feedingGroups(wiring: Required<Wiring>, protectors: readonly RatedProtector[], wiresM: ReadonlyMap<string, number>) {
  const smallest = smallestByRun(protectors)
  const guards = new Map([...smallest].map(([run, one]) => [run, guardOf(one, wiresM.get(run) ?? null)]))
  const groupOf = (by: Feeders): Group | null =>
    by === null ? null : { protectors: by.flatMap(run => smallest.get(run) ?? []), unknown: by.filter(run => !smallest.has(run)) }
  const groupAt = ({ end, by }: FedAt): GroupAt => ({ end, group: groupOf(by) })
  const before = wiring.runs.map(run => ({ run, ends: fedBefore(wiring, guards, run) }))
  const found: FeedingGroups = {
    runs: new Map(before.map(({ run, ends }) => [run.id, fedAt(guards, run, ends).map(groupAt)])),
    before: new Map(before.map(({ run, ends }) => [run.id, ends.map(groupAt)])),
    loads: new Map(wiring.loads.map(({ name }) => [name, groupOf(feedersOfLoad(wiring, guards, name))]))
  }
  return found
}

/** In series the one that opens first counts. */
function smallestByRun(protectors: readonly RatedProtector[]): ReadonlyMap<string, RatedProtector> {
  return new Map(protectors.toSorted((a, b) => b.ratingA.value - a.ratingA.value).map(one => [one.run, one]))
}

function guardOf({ ratingA, item }: RatedProtector, wireM: number | null): Guard {
  return { ratingA: ratingA.value, seat: seatOf(item.along?.value ?? null, wireM) }
}

function seatOf(alongM: number | null, wireM: number | null): Seat {
  if (alongM === null || wireM === null) return 'unsaid'
  return alongM <= wireM / 2 ? 'from' : 'to'
}

/** Of a load in series with others the smallest that it gets no current without, wherever that stands. */
function feedersOfLoad(wiring: Required<Wiring>, guards: ReadonlyMap<string, Guard>, name: string): Feeders {
  const { from } = wiring.loads.find(one => one.name === name)!
  const direct = feedersOf(wiring, guards, from)
  if (direct === null || direct.length > 0) return direct
  const series = loadGuards(wiring, name).toSorted((a, b) => ratingOf(a) - ratingOf(b))[0]
  if (series !== undefined) return [series]
  const way = loadWay(wiring, wiring.sources, name)
  return way === null ? [] : feedersOf(wiring, guards, way.feed)

  function ratingOf(run: string): number {
    return guards.get(run)?.ratingA ?? Number.POSITIVE_INFINITY
  }
}

export function sumA({ protectors }: Group): number {
  return protectors.reduce((sum, { ratingA }) => sum + ratingA.value, 0)
}
