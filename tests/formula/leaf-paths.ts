/** Where each number stands in what a calculation gives, depth first. */
export function leavesOf(results: unknown, path: readonly string[] = []): readonly { readonly path: readonly string[] }[] {
  if (typeof results === 'number') return [{ path }]
  if (typeof results !== 'object' || results === null) return []
  return Object.entries(results).flatMap(([key, child]) => leavesOf(child, [...path, key]))
}
