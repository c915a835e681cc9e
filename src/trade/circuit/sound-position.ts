import { closedRuns, type Opened } from './closings.ts'
import { loadWay } from './load-way.ts'
import { regionsOf } from './regions.ts'
import { shortedIn } from './shorting-runs.ts'
import type { Switching } from './switching.ts'

/** Whether a position shorts no source and puts none together that are not so as drawn. */
export function soundIn(switching: Switching): (position: Opened) => boolean {
  const most = roundsOf(switching, new Set(switching.open))
  return position => roundsOf(switching, position) <= most
}

/** Whether a position shorts no source that is not shorted as drawn; sources may come together. */
export function unshortedIn(switching: Switching): (position: Opened) => boolean {
  const most = shortedIn(switching, new Set(switching.open))
  return position => shortedIn(switching, position) <= most
}

/** Whether the current of each load that is fed goes from its `to` to its `from`. */
export function turnedIn({ runs, loads, sources }: Switching, position: Opened): ReadonlyMap<string, boolean> {
  const closed = closedRuns(runs, position)
  const ways = loads.map(({ name }) => ({ name, way: loadWay({ runs: closed, loads }, sources, name) }))
  return new Map(ways.flatMap(({ name, way }) => (way === null ? [] : [[name, way.passes.some(one => one.load === name && one.turned)]])))
}

/** Rounds through sources and runs alone: a source shorted, or beside another. */
function roundsOf({ runs, sources }: Switching, position: Opened): number {
  const { region } = regionsOf(closedRuns(runs, position))
  const joined = regionsOf([])
  return sources.filter(({ from, to }) => !joined.join(region(from), region(to))).length
}
