import { spread } from './spread.ts'

/** What lets no more through than so much, whichever way round. */
export interface Valve {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly limitA: number
}

interface Step {
  readonly at: number
  /** Nought along it, one against it. */
  readonly against: 0 | 1
}

/** Of all sets of valves that part two places, the one with the least sum, nearest to the start: as much as that can flow, and no more. */
export function leastCut(valves: readonly Valve[], start: string, end: string): readonly string[] {
  const left = valves.map(({ limitA }): [number, number] => [limitA, limitA])
  for (;;) {
    const ways = waysWithRoom(valves, left, start)
    const way = ways.get(end)
    if (way === undefined) return valves.filter(({ from, to }) => ways.has(from) !== ways.has(to)).map(({ id }) => id)
    const room = Math.min(...way.map(({ at, against }) => left[at]![against]))
    for (const { at, against } of way) {
      left[at]![against] -= room
      left[at]![1 - against]! += room
    }
  }
}

/** The fewest steps to every place that there is room to. */
function waysWithRoom(valves: readonly Valve[], left: readonly [number, number][], start: string): ReadonlyMap<string, readonly Step[]> {
  const ways = new Map<string, readonly Step[]>([[start, []]])
  for (const [place, way] of ways)
    for (const [at, { from, to }] of valves.entries()) {
      if (from === place && left[at]![0] > 0 && !ways.has(to)) ways.set(to, [...way, { at, against: 0 }])
      if (to === place && left[at]![1] > 0 && !ways.has(from)) ways.set(from, [...way, { at, against: 1 }])
    }
  return ways
}

/** What leads to the end, where every tie joins two points to one place: nothing where the start leads there without a valve. */
export function valvesTo(valves: readonly Valve[], ties: readonly Omit<Valve, 'limitA'>[], start: string, end: string) {
  if (spread(start, ties).has(end)) return null
  const places = new Map<string, string>()
  const placeOf = (point: string) => {
    const known = places.get(point)
    if (known !== undefined) return known
    for (const one of spread(point, ties)) places.set(one, point)
    return point
  }
  const drawn = valves.map(one => ({ ...one, from: placeOf(one.from), to: placeOf(one.to) }))
  return leastCut(drawn, placeOf(start), placeOf(end))
}
