import type { Wiring } from './guarding.ts'
import { loadWay, type SourceLine } from './load-way.ts'
import { regionsOf } from './regions.ts'
import { spread, type Tie } from './spread.ts'

/** A circuit as lines, and which runs can be opened and closed. */
export interface Switching extends Pick<Wiring, 'runs' | 'loads'> {
  readonly sources: readonly SourceLine[]
  readonly switchable: readonly string[]
  /** As it is drawn. */
  readonly open: readonly string[]
}

/** The runs that are open in one position of the switches. */
export type Opened = ReadonlySet<string>

/**
 * The positions in which something may carry more than as it is drawn: what is drawn open closed, together and each alone, also with
 * what must be open for that, as where two in series are put in parallel; and of runs that lead the same way each alone. A position that puts sources together which are not together as drawn is none.
 */
export function switchPositions(switching: Switching): readonly Opened[] {
  const { open, switchable } = switching
  const drawn = new Set(open)
  const beside = switchable.filter(id => leadsBeside(switching, id))
  const wanted = [
    ...(open.length === 0 ? [] : [mostClosed(switching), ...insteadOf(switching), ...open.map(id => without(drawn, id))]),
    ...beside.map(id => alone(switching, beside, id)),
    ...beside.map(id => new Set([...open, id]))
  ]
  const most = roundsOf(switching, drawn)
  const found = new Map(wanted.filter(position => roundsOf(switching, position) <= most).map(position => [keyOf(position), position]))
  found.delete(keyOf(drawn))
  return [...found.values()]
}

/** Everything closed that can be, with no two sources put together that are not together as drawn. */
export function mostClosed(switching: Switching): Opened {
  const drawn: Opened = new Set(switching.open)
  const most = roundsOf(switching, drawn)
  return switching.open.reduce((so, id) => (roundsOf(switching, without(so, id)) > most ? so : without(so, id)), drawn)
}

/** What is drawn open closed before anything else: what would short a source then is open. Nothing where that turns a load round. */
function insteadOf(switching: Switching): readonly Opened[] {
  const { open, switchable } = switching
  const order = [...open, ...switchable.filter(id => !open.includes(id))]
  const most = roundsOf(switching, new Set(open))
  const position = order.reduce<Opened>((so, id) => (roundsOf(switching, without(so, id)) > most ? so : without(so, id)), new Set(order))
  const [drawn, then] = [turnedIn(switching, new Set(open)), turnedIn(switching, position)]
  return [...then].some(([load, turned]) => drawn.has(load) && drawn.get(load) !== turned) ? [] : [position]
}

/** Whether the current of each load that is fed goes from its `to` to its `from`. */
function turnedIn({ runs, loads, sources }: Switching, position: Opened): ReadonlyMap<string, boolean> {
  const closed = runs.filter(({ id }) => !position.has(id))
  const ways = loads.map(({ name }) => ({ name, way: loadWay({ runs: closed, loads }, sources, name) }))
  return new Map(ways.flatMap(({ name, way }) => (way === null ? [] : [[name, way.passes.some(one => one.load === name && one.turned)]])))
}

function without(position: Opened, id: string): Opened {
  return new Set([...position].filter(one => one !== id))
}

function keyOf(position: Opened): string {
  return JSON.stringify([...position].toSorted())
}

/** Every other run beside it that no load needs then. */
function alone(switching: Switching, beside: readonly string[], id: string): Opened {
  const open = new Set<string>()
  const fed = fedLoads(switching, open)
  for (const other of beside) {
    if (other === id) continue
    open.add(other)
    const left = fedLoads(switching, open)
    if ([...fed].some(load => !left.has(load))) open.delete(other)
  }
  return open
}

/** Loads that a source drives a current through. */
export function fedLoads({ runs, loads, sources }: Switching, position: Opened): ReadonlySet<string> {
  const closed = runs.filter(({ id }) => !position.has(id))
  return new Set(loads.flatMap(({ name }) => (loadWay({ runs: closed, loads }, sources, name) === null ? [] : [name])))
}

/** Rounds through sources and runs alone: a source shorted, or beside another. */
function roundsOf({ runs, sources }: Switching, position: Opened): number {
  const closed = runs.filter(({ id }) => !position.has(id))
  const { region } = regionsOf(closed)
  const joined = regionsOf([])
  return sources.filter(({ from, to }) => !joined.join(region(from), region(to))).length
}

/** Whether current finds another way round a run: along runs, through another source, or through loads between the rails. */
function leadsBeside({ runs, loads, sources }: Switching, id: string): boolean {
  const run = runs.find(one => one.id === id)
  if (run === undefined) return false
  const rest = runs.filter(one => one.id !== id)
  const { region } = regionsOf([...rest, ...sources])
  return region(run.from) === region(run.to) || leadsThroughLoads({ run, lines: [...rest, ...loads], rail: railOf(rest, sources) })
}

type Rail = (point: string) => boolean

function railOf(rest: Wiring['runs'], sources: readonly SourceLine[]): Rail {
  const { region } = regionsOf(rest)
  const rails = new Set(sources.flatMap(({ from, to }) => [region(from), region(to)]))
  return point => rails.has(region(point))
}

interface Way {
  readonly run: Wiring['runs'][number]
  readonly lines: readonly Tie[]
  readonly rail: Rail
}

function leadsThroughLoads({ run, lines, rail }: Way): boolean {
  const [start, end] = rail(run.from) ? [run.to, run.from] : [run.from, run.to]
  return spread(start, lines, rail).has(end)
}
