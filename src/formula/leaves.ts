/** Where a number stands in what a calculation gives. */
export interface Leaf {
  readonly path: readonly string[]
}

/** Every number in a result, depth first. Texts, nulls and switches are no leaves. */
export function leavesOf(results: unknown, path: readonly string[] = []): readonly Leaf[] {
  if (typeof results === 'number') return [{ path }]
  if (typeof results !== 'object' || results === null) return []
  return Object.entries(results).flatMap(([key, child]) => leavesOf(child, [...path, key]))
}

/** The same result with something else in place of each number, taken in the order of `leavesOf`. */
export function withLeaves(results: unknown, next: (number: number) => unknown): unknown {
  if (typeof results === 'number') return next(results)
  if (typeof results !== 'object' || results === null) return results
  if (Array.isArray(results)) return results.map(child => withLeaves(child, next))
  return Object.fromEntries(Object.entries(results).map(([key, child]) => [key, withLeaves(child, next)]))
}
