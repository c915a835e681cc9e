import type { Wiring } from './guarding.ts'
import { type Region, regionsOf } from './regions.ts'

/** A battery or generator as a line: minus at `from`, plus at `to`. */
export interface SourceLine {
  readonly id: string
  readonly from: string
  readonly to: string
}

/** How a load comes by its current: round through a source, and through whatever loads stand in series with it. */
export interface LoadWay {
  /** One after the other; those of one step stand side by side. */
  readonly sources: readonly (readonly string[])[]
  /** Itself, and what the same current passes besides; turned where it is drawn against the current. */
  readonly passes: readonly { readonly load: string; readonly turned: boolean }[]
  /** Where runs leave off before the first of those, and begin again after the last. */
  readonly feed: string
  readonly back: string
}

interface Hop {
  readonly kind: 'source' | 'load'
  readonly id: string
  readonly enters: string
  readonly leaves: string
  readonly turned: boolean
}

/** Null where no source drives a current through it by itself. */
export function loadWay({ runs, loads }: Pick<Wiring, 'runs' | 'loads'>, sources: readonly SourceLine[], name: string): LoadWay | null {
  const load = loads.find(one => one.name === name)
  if (load === undefined) return null
  const { region } = regionsOf(runs)
  const rails = new Set(sources.flatMap(({ from, to }) => [region(from), region(to)]))
  const hops = [...sources.map(sourceHop), ...loads.filter(one => one !== load).flatMap(loadHops)]
  for (const own of loadHops(load)) {
    const round = cheapest(hops, { region, rails, start: own.leaves, end: own.enters })
    if (round !== null) return wayAlong(own, round, sources, region)
  }
  return null
}

function sourceHop({ id, from, to }: SourceLine): Hop {
  return { kind: 'source', id, enters: from, leaves: to, turned: false }
}

function loadHops({ name, from, to }: Wiring['loads'][number]): readonly Hop[] {
  return [
    { kind: 'load', id: name, enters: from, leaves: to, turned: false },
    { kind: 'load', id: name, enters: to, leaves: from, turned: true }
  ]
}

function wayAlong(own: Hop, round: readonly Hop[], sources: readonly SourceLine[], region: Region): LoadWay {
  const first = round.findIndex(({ kind }) => kind === 'source')
  const last = round.findLastIndex(({ kind }) => kind === 'source')
  const beside = ({ enters, leaves }: Hop) =>
    sources.filter(({ from, to }) => region(from) === region(enters) && region(to) === region(leaves)).map(({ id }) => id)
  return {
    sources: round.filter(({ kind }) => kind === 'source').map(beside),
    passes: [own, ...round.filter(({ kind }) => kind === 'load')].map(({ id, turned }) => ({ load: id, turned })),
    feed: (round[last + 1] ?? own).enters,
    back: (round[first - 1] ?? own).leaves
  }
}

interface Ends {
  readonly region: Region
  /** Where a source stands: two loads that meet there are not in series. */
  readonly rails: ReadonlySet<string>
  readonly start: string
  readonly end: string
}

/** No other load is passed where a way leads without. */
const COST = { source: 1, load: 1000 } as const

/** From one place to another through a source at least. */
function cheapest(hops: readonly Hop[], { region, rails, start, end }: Ends): readonly Hop[] | null {
  if (region(start) === region(end)) return null
  const found = new Map([[stateOf(region(start), false), { cost: 0, at: region(start), driven: false, hops: [] as readonly Hop[] }]])
  // A way is bettered until none can be: circuits are small.
  for (const { cost, at, driven, hops: way } of found.values())
    for (const hop of hops) {
      if (region(hop.enters) !== at || way.some(({ id, kind }) => id === hop.id && kind === hop.kind)) continue
      if (hop.kind === 'load' && (meetsAtRail(at, way) || (region(hop.leaves) === region(end) && rails.has(region(end))))) continue
      const next = { cost: cost + COST[hop.kind], at: region(hop.leaves), driven: driven || hop.kind === 'source', hops: [...way, hop] }
      const state = stateOf(next.at, next.driven)
      const before = found.get(state)
      if (before !== undefined && before.cost <= next.cost) continue
      found.delete(state)
      found.set(state, next)
    }
  return found.get(stateOf(region(end), true))?.hops ?? null

  function meetsAtRail(at: string, way: readonly Hop[]): boolean {
    return rails.has(at) && way.at(-1)?.kind !== 'source'
  }
}

function stateOf(at: string, driven: boolean): string {
  return `${driven ? 'driven' : 'loose'} ${at}`
}
