import type { Wiring } from './guarding.ts'
import { type LoadWay, loadWay } from './load-way.ts'

/**
 * Whether a load still gets current when none of these runs conducts. What stands in series with it must let its current
 * through; round about, through another load, is no feed.
 */
export function staysFed(wiring: Wiring, name: string, open: readonly string[]): boolean {
  const way = wayWithout(wiring, name, [])
  if (way === null) return false
  const loads = wiring.loads.filter(one => way.passes.some(({ load }) => load === one.name))
  return wayWithout({ ...wiring, loads }, name, open) !== null
}

/** Runs that feed a load beside these: without one of them they would cut it. */
export function leadingRound(wiring: Wiring, name: string, open: readonly string[]): readonly string[] {
  const round = wiring.runs.filter(({ id }) => staysFed(wiring, name, [id]) && !staysFed(wiring, name, [...open, id]))
  return round.map(({ id }) => id)
}

/** Other loads through which a load still gets current when none of these runs conducts, as one that a switch bridges; null where it gets none. */
export function fedThrough(wiring: Wiring, name: string, open: readonly string[]): readonly string[] | null {
  const way = wayWithout(wiring, name, open)
  return way === null ? null : way.passes.flatMap(({ load }) => (load === name ? [] : [load]))
}

function wayWithout(
  { bus, ground, runs, loads, sources = [{ id: bus, from: ground, to: bus }] }: Wiring,
  name: string,
  open: readonly string[]
): LoadWay | null {
  return loadWay({ runs: runs.filter(({ id }) => !open.includes(id)), loads }, sources, name)
}
