import { reached, type Wiring, wayTo } from './guarding.ts'
import { liveEnds } from './live-ends.ts'

/** What no protector stands before. */
export interface Unguarded {
  readonly loads: readonly string[]
  /** Runs on the way from a source to one of those. */
  readonly runs: ReadonlySet<string>
  /** Points behind the source along those: a short there is nobody's to clear, and has to be told. */
  readonly points: ReadonlySet<string>
}

/** Several protectors side by side guard together: only a way without any is one that nobody guards. */
export function unguardedOf(wiring: Wiring): Unguarded {
  const starts = liveEnds(wiring)
  const found = starts.map(start => unguardedFrom(wiring, start))
  return {
    loads: wiring.loads.map(({ name }) => name).filter(name => found.some(({ loads }) => loads.includes(name))),
    runs: new Set(found.flatMap(({ runs }) => runs)),
    points: new Set(found.flatMap(({ points }) => points).filter(point => !starts.includes(point)))
  }
}

function unguardedFrom({ ground, runs, loads }: Wiring, start: string) {
  const bare = runs.filter(({ protects, from, to }) => protects === 'no' && from !== ground && to !== ground)
  const fed = reached(start, ground, bare)
  const found = loads.filter(({ from }) => fed.has(from))
  const ways = new Set(found.flatMap(({ from }) => wayTo({ bus: start, runs: bare }, from)))
  const points = bare.flatMap(({ id, from, to }) => (ways.has(id) ? [from, to] : []))
  return { loads: found.map(({ name }) => name), runs: [...ways], points }
}
