import { loadGuards, reached, type Wiring, wayTo } from './guarding.ts'

/** What no protector stands before. */
export interface Unguarded {
  readonly loads: readonly string[]
  /** Runs on the way from the bus to one of those. */
  readonly runs: ReadonlySet<string>
  /** Points behind the bus along those: a short there is nobody's to clear, and has to be told. */
  readonly points: ReadonlySet<string>
}

export function unguardedOf(wiring: Wiring): Unguarded {
  const loads = unguardedLoads(wiring)
  const runs = new Set(wiring.loads.flatMap(({ name, from }) => (loads.includes(name) ? wayTo(wiring, from) : [])))
  const ends = wiring.runs.flatMap(({ id, from, to }) => (runs.has(id) ? [from, to] : []))
  return { loads, runs, points: new Set(ends.filter(point => point !== wiring.bus)) }
}

/** On any way. */
function unguardedLoads(wiring: Wiring): readonly string[] {
  const { bus, ground, runs, loads } = wiring
  const fed = reached(bus, ground, runs)
  return loads.flatMap(({ name, from }) => (fed.has(from) && loadGuards(wiring, name).length === 0 ? [name] : []))
}
