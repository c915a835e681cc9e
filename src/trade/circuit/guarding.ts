import { loadWay, type SourceLine } from './load-way.ts'
import { spread } from './spread.ts'

/** A circuit as lines between points: what hangs on what, without any resistance. */
export interface Wiring {
  readonly bus: string
  readonly ground: string
  readonly runs: readonly { readonly id: string; readonly from: string; readonly to: string; readonly protects: 'yes' | 'no' }[]
  readonly loads: readonly { readonly name: string; readonly from: string; readonly to: string }[]
  /** All of them; without, the bus is the plus of the only one. */
  readonly sources?: readonly SourceLine[]
}

export interface Guarding {
  readonly side: 'feed' | 'return' | 'neither'
  /** Runs with a fuse or breaker that stand before it on every way; its own counts. Of a return: those of the loads that hang on it. */
  readonly guards: readonly string[]
  /** Loads that are without current when it is open. */
  readonly loads: readonly string[]
}

type Line = Wiring['runs'][number]
type Ends = Pick<Line, 'from' | 'to'>

/** For every run: on which side of the loads it lies, which protectors stand before it, which loads hang on it. */
export function guardings(wiring: Wiring): ReadonlyMap<string, Guarding> {
  const { bus, ground, runs } = wiring
  const feeds = reached(bus, ground, runs)
  const returns = reached(ground, bus, runs)
  const direct = new Set(wiring.loads.filter(({ from, to }) => feeds.has(from) && returns.has(to)))
  return new Map(
    runs.map(run => {
      const side = feeds.has(run.from) && feeds.has(run.to) ? 'feed' : returns.has(run.from) && returns.has(run.to) ? 'return' : 'neither'
      const loads = hangingOn(wiring, run, direct)
      const guards = side === 'feed' ? guardsOf(wiring, run) : [...new Set(loads.flatMap(name => loadGuards(wiring, name)))]
      return [run.id, { side, guards, loads }]
    })
  )
}

/** Protectors that stand between the bus and the point where a load is fed. */
export function loadGuards(wiring: Wiring, name: string): readonly string[] {
  const { bus, ground, runs, loads } = wiring
  const load = loads.find(one => one.name === name)
  if (load === undefined) return []
  if (!isDirect(wiring, load)) return runs.filter(({ id, protects }) => protects === 'yes' && needs(wiring, name, id)).map(({ id }) => id)
  const without = (id: string) => runs.filter(run => run.id !== id)
  return runs.filter(({ id, protects }) => protects === 'yes' && !reached(bus, ground, without(id)).has(load.from)).map(({ id }) => id)
}

/** Points that runs alone join to the 0 V node: where a ground shift can be measured. */
export function returnPoints({
  bus,
  ground,
  runs
}: Pick<Wiring, 'bus' | 'ground'> & { readonly runs: readonly Ends[] }): readonly string[] {
  return [...reached(ground, bus, runs)].filter(point => point !== ground)
}

/** The runs from the bus to a point, the fewest; nothing where no run leads there. */
export function wayTo({ bus, runs }: Pick<Wiring, 'bus' | 'runs'>, point: string): readonly string[] {
  const ways = new Map<string, readonly string[]>([[bus, []]])
  for (const [at, way] of ways) {
    if (at === point) return way
    for (const { id, from, to } of runs) {
      const next = from === at ? to : to === at ? from : undefined
      if (next !== undefined && !ways.has(next)) ways.set(next, [...way, id])
    }
  }
  return []
}

function guardsOf({ bus, ground, runs }: Wiring, run: Line): readonly string[] {
  return runs
    .filter(
      ({ id, protects }) =>
        protects === 'yes' &&
        (id === run.id ||
          !leadsTo(
            run,
            reached(
              bus,
              ground,
              runs.filter(one => one.id !== id)
            )
          ))
    )
    .map(({ id }) => id)
}

function leadsTo({ from, to }: Line, points: ReadonlySet<string>): boolean {
  return points.has(from) || points.has(to)
}

function hangingOn(wiring: Wiring, { id }: Line, direct: ReadonlySet<Wiring['loads'][number]>): readonly string[] {
  const { bus, ground, runs, loads } = wiring
  const rest = runs.filter(run => run.id !== id)
  const [feeds, returns] = [reached(bus, ground, rest), reached(ground, bus, rest)]
  return loads
    .filter(load => (direct.has(load) ? !feeds.has(load.from) || !returns.has(load.to) : needs(wiring, load.name, id)))
    .map(({ name }) => name)
}

/** Whether runs alone join a load to the bus and to the 0 V node: no other load is in its way, and the bus feeds it. */
function isDirect({ bus, ground, runs }: Wiring, { from, to }: Wiring['loads'][number]): boolean {
  return reached(bus, ground, runs).has(from) && reached(ground, bus, runs).has(to)
}

/** Whether a load that gets its current in a round about way gets none without a run. */
function needs({ bus, ground, runs, loads, sources = [{ id: bus, from: ground, to: bus }] }: Wiring, name: string, id: string): boolean {
  const way = loadWay({ runs, loads }, sources, name)
  if (way === null) return false
  const passed = loads.filter(one => way.passes.some(({ load }) => load === one.name))
  return loadWay({ runs: runs.filter(run => run.id !== id), loads: passed }, sources, name) === null
}

/** Points that runs join to a start, without passing the stop. */
export function reached(start: string, stop: string, runs: readonly Ends[]): ReadonlySet<string> {
  return spread(start, runs, point => point === stop)
}

export interface LooseEnd {
  readonly load: string
  readonly point: string
  /** The point that no run leads to from there. */
  readonly other: string
}

/** An end of a load that leads nowhere: through runs and other loads it comes to the feed alone, to the return alone, or to neither. */
export function looseEnd({ bus, ground, runs, loads }: Wiring): LooseEnd | null {
  const [feeds, returns] = [reached(bus, ground, runs), reached(ground, bus, runs)]
  const joined = (point: string) => feeds.has(point) || returns.has(point)
  const found = loads.flatMap(({ name, from, to }) =>
    [from, to].flatMap(point => {
      const around = joined(point) ? [] : [...spread(point, [...runs, ...loads], joined)]
      const [fed, back] = [around.some(one => feeds.has(one)), around.some(one => returns.has(one))]
      return around.length === 0 || (fed && back) ? [] : [{ load: name, point, other: fed ? ground : bus }]
    })
  )
  return found[0] ?? null
}
