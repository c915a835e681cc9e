/** A protector that opens, or may: between its two edges. */
export interface Opening {
  readonly id: string
  readonly currentA: number
  readonly shortestS: number
  readonly longestS: number
}

export interface FedBackwards {
  readonly id: string
  readonly how: 'reversed' | 'though switched off' | 'through another load'
  readonly dropV: number
  /** Infinite: nothing opens that ends it. */
  readonly clearedS: number
}

export interface Overload {
  readonly id: string
  readonly currentA: number
  readonly ampacityA: number
  /** Infinite: nothing opens that takes it away. */
  readonly clearedS: number
}

export interface FaultEffects {
  /** What flows in every element before anything opens. */
  readonly currentsA: { readonly [id: string]: number }
  /** Protectors that must open, in the order they do. */
  readonly opens: readonly Opening[]
  /** Those that may open and may not. */
  readonly doubtful: readonly Opening[]
  readonly backwards: readonly FedBackwards[]
  readonly overloads: readonly Overload[]
  /** Loads that get less than half of their current. */
  readonly lost: readonly string[]
}

/** Burning for good stands above fed backwards, that above a protector in doubt, that above what is cleared and what merely stops. */
export function harmOf({ overloads, backwards, doubtful, opens, lost }: FaultEffects): number {
  const burning = overloads.filter(({ clearedS }) => !Number.isFinite(clearedS)).map(({ currentA, ampacityA }) => currentA / ampacityA)
  const cleared = overloads.filter(({ clearedS }) => Number.isFinite(clearedS)).map(({ clearedS }) => clearedS)
  const parts = [
    [1e6, Math.min(1000, ...(burning.length === 0 ? [0] : [Math.max(...burning)]))],
    [1e5, Math.min(9, backwards.length)],
    [1e4, Math.min(9, doubtful.length)],
    [1e3, Math.min(9, Math.log1p(Math.max(0, ...cleared)))],
    [1e2, Math.min(9, opens.length)],
    [1, Math.min(99, lost.length)]
  ] as const
  return parts.reduce((sum, [weight, size]) => sum + weight * size, 0)
}
