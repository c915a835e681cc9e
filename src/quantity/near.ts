import { distance } from 'fastest-levenshtein'

/** The known word nearest to what was written, where one is near: two strokes away or a third of the word. Of two as near, the one as long. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const ranked = known
    .map(candidate => ({ candidate, strokes: distance(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.strokes - b.strokes || lengthened(word, a.candidate) - lengthened(word, b.candidate))
  const best = ranked[0]
  return best !== undefined && best.strokes <= Math.max(2, word.length / 3) && best.strokes < word.length ? best.candidate : undefined
}

function lengthened(word: string, candidate: string): number {
  return Math.abs(word.length - candidate.length)
}
