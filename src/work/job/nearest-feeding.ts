import type { Opened } from '../../trade/circuit/closings.ts'

interface Switched {
  readonly open: Opened
  /** Loads that a source drives a current through. */
  readonly fed: ReadonlySet<string>
}

/** Of several positions of the switches those that feed a load with the fewest switches changed from how they are drawn. */
export function nearestFeeding<P extends Switched>(drawn: Opened, positions: readonly P[], name: string): readonly P[] {
  const feeding = positions.flatMap(position => (position.fed.has(name) ? [{ position, count: changed(drawn, position.open) }] : []))
  const fewest = Math.min(...feeding.map(({ count }) => count))
  return feeding.flatMap(({ position, count }) => (count === fewest ? [position] : []))
}

/** How many switches stand otherwise than they are drawn. */
export function changed(drawn: Opened, open: Opened): number {
  return [...drawn].filter(id => !open.has(id)).length + [...open].filter(id => !drawn.has(id)).length
}
