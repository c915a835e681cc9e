/** Heaters that the supply counts for a part of the time: the warm-up is reckoned as if they were on until it is warm. */
export function partTimeDoubts(heaters: readonly string[] = []): readonly string[] {
  if (heaters.length === 0) return []
  return [`reckoned as if ${heaters.join(', ')} stays on all the while, though the circuit says for how much of the time it is on`]
}
