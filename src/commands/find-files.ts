import { stat } from 'node:fs/promises'
import { glob, isDynamicPattern } from 'tinyglobby'

/** Files as they were named; a folder gives the job files in it, a pattern those that match. What is none of these is left for the reader to miss. */
export async function findFiles(words: readonly string[]): Promise<readonly string[]> {
  const found = await Promise.all(words.map(filesOf))
  return [...new Set(found.flat())]
}

async function filesOf(word: string): Promise<readonly string[]> {
  const there = await stat(word).catch(() => undefined)
  if (there?.isDirectory())
    return (await glob('**/*.{yaml,yml}', { cwd: word, expandDirectories: false }))
      .sort()
      .map(file => `${word.replace(/\/+$/, '')}/${file}`)
  if (there !== undefined || !isDynamicPattern(word)) return [word]
  const matching = (await glob(word, { expandDirectories: false })).sort()
  return matching.length > 0 ? matching : [word]
}
