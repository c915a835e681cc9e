import { distance } from 'fastest-levenshtein'

/** The nearest of the names, where it is near: two letters off, or a third of the word. */
export function nearestName(text: string, names: readonly string[]): string | undefined {
  const off = names.map(name => distance(text.toLowerCase(), name.toLowerCase()))
  const least = Math.min(...off)
  return least <= Math.max(2, text.length / 3) ? names[off.indexOf(least)] : undefined
}
