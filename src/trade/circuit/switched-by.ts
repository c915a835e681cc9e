import type { Wiring } from './guarding.ts'
import { loadWay } from './load-way.ts'

/**
 * Whether a load still gets current when none of these runs conducts. What stands in series with it must let its current
 * through; round about, through another load, is no feed.
 */
export function staysFed(
  { bus, ground, runs, loads, sources = [{ id: bus, from: ground, to: bus }] }: Wiring,
  name: string,
  open: readonly string[]
): boolean {
  const way = loadWay({ runs, loads }, sources, name)
  if (way === null) return false
  const passed = loads.filter(one => way.passes.some(({ load }) => load === one.name))
  return loadWay({ runs: runs.filter(({ id }) => !open.includes(id)), loads: passed }, sources, name) !== null
}

/** Other loads through which a load still gets current when none of these runs conducts, as one that a switch bridges; null where it gets none. */
export function fedThrough(
  { bus, ground, runs, loads, sources = [{ id: bus, from: ground, to: bus }] }: Wiring,
  name: string,
  open: readonly string[]
): readonly string[] | null {
  const way = loadWay({ runs: runs.filter(({ id }) => !open.includes(id)), loads }, sources, name)
  return way === null ? null : way.passes.flatMap(({ load }) => (load === name ? [] : [load]))
}
