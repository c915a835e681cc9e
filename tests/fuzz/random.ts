/** Even numbers in 0..1, the same row for the same seed (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Draws that say what is drawn. */
export interface Draw {
  readonly below: (count: number) => number
  readonly oneOf: <T>(items: readonly T[]) => T
}

export function drawsOf(seed: number): Draw {
  const random = seeded(seed)
  const below = (count: number) => Math.floor(random() * count)
  return { below, oneOf: items => items[below(items.length)]! }
}
