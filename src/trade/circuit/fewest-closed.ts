import { keyOf, type Opened } from './closings.ts'

export interface Feeding {
  /** Where it is fed. */
  readonly most: Opened
  /** What is closed there and may be opened. */
  readonly closed: readonly string[]
  readonly isFed: (position: Opened) => boolean
}

/** Each way to feed a load with the fewest of its switches closed, in whatever order they are listed. */
export function fewestClosed(feeding: Feeding): readonly Opened[] {
  const ways = nothingInVain(feeding)
  const fewest = Math.max(...ways.map(way => way.size))
  return ways.filter(way => way.size === fewest)
}

/**
 * Each way to feed a load that closes nothing in vain. One is found by opening one switch after the other; every other way does
 * without one that it closes, and so on from there.
 */
export function nothingInVain({ most, closed, isFed }: Feeding): readonly Opened[] {
  const ways = new Map<string, Opened>()
  const without = new Map([[keyOf(most), most]])
  for (const position of without.values()) {
    if (!isFed(position)) continue
    const way = closed.reduce<Opened>((so, id) => (isFed(opened(so, id)) ? opened(so, id) : so), position)
    ways.set(keyOf(way), way)
    for (const id of closed) if (!way.has(id) && without.size < MOST) add(opened(position, id))
  }
  return [...ways.values()]

  function add(position: Opened): void {
    without.set(keyOf(position), position)
  }
}

/** A harness has a few ways to one load; a drawing with very many is not looked through to the end. */
const MOST = 400

function opened(position: Opened, id: string): Opened {
  return new Set([...position, id])
}
