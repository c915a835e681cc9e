import { loadGuards, reached, type Wiring, wayTo } from './guarding.ts'

/** Points of the feed that no protector stands before: a short there is nobody's to clear. */
export function barePoints({ bus, ground, runs }: Wiring): ReadonlySet<string> {
  return reached(
    bus,
    ground,
    runs.filter(({ protects }) => protects === 'no')
  )
}

/** Loads that no protector stands before on any way. */
export function unguardedLoads(wiring: Wiring): readonly string[] {
  const { bus, ground, runs, loads } = wiring
  const fed = reached(bus, ground, runs)
  return loads.flatMap(({ name, from }) => (fed.has(from) && loadGuards(wiring, name).length === 0 ? [name] : []))
}

/** Runs on the way to a load that no protector stands before. */
export function unguardedRuns(wiring: Wiring): ReadonlySet<string> {
  const open = unguardedLoads(wiring)
  return new Set(wiring.loads.flatMap(({ name, from }) => (open.includes(name) ? wayTo(wiring, from) : [])))
}

/** Points behind the bus along those: a short there is nobody's to clear, and has to be told. */
export function unguardedPoints(wiring: Wiring): ReadonlySet<string> {
  const ways = unguardedRuns(wiring)
  const ends = wiring.runs.flatMap(({ id, from, to }) => (ways.has(id) ? [from, to] : []))
  return new Set(ends.filter(point => point !== wiring.bus))
}
