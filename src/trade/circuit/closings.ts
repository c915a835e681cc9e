/** The runs that are open in one position of the switches. */
export type Opened = ReadonlySet<string>

/** What is left of runs when these are open. */
export function closedRuns<R extends { readonly id: string }>(runs: readonly R[], open: Opened): readonly R[] {
  return runs.filter(({ id }) => !open.has(id))
}

export interface Closing {
  /** What is open before anything is closed. */
  readonly start: Opened
  /** What may be closed, what goes first in front. */
  readonly order: readonly string[]
  /** Whether a position may be, got by closing one more from another. */
  readonly isSound: (position: Opened, before: Opened) => boolean
}

/**
 * Positions in which nothing more can be closed. Where something stays open it may be another that stays so: from each position
 * those that follow when one of the closed comes last, or one of the open first. No more than two for each that may be closed.
 */
export function closings({ start, order, isSound }: Closing): readonly Opened[] {
  const found = new Map<string, Opened>()
  add(order)
  for (const position of found.values()) {
    const left = order.filter(id => position.has(id))
    if (left.length === 0) continue
    const closed = order.filter(id => !position.has(id))
    for (const last of closed) add([...closed.filter(id => id !== last), ...left, last])
    for (const first of left) add([first, ...closed, ...left.filter(id => id !== first)])
  }
  return [...found.values()]

  function add(ids: readonly string[]): void {
    if (found.size >= Math.max(1, MOST_EACH * order.length)) return
    const position = ids.reduce<Opened>(oneMore, start)
    if (!found.has(keyOf(position))) found.set(keyOf(position), position)
  }

  function oneMore(so: Opened, id: string): Opened {
    const next = without(so, id)
    return isSound(next, so) ? next : so
  }
}

const MOST_EACH = 2

export function without(position: Opened, id: string): Opened {
  return new Set([...position].filter(one => one !== id))
}

export function keyOf(position: Opened): string {
  return JSON.stringify([...position].toSorted())
}
