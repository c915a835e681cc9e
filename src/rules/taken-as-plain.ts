/** Loads that count as plain resistances at switch-on, of which nobody said that they are. */
export function takenAsPlain(names: readonly string[]): readonly string[] {
  if (names.length === 0) return []
  return [
    `neither kind nor inrush of ${names.join(', ')} is given: taken as a plain resistance, which takes no more when it is switched on`
  ]
}
