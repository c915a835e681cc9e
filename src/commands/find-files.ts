import { realpathSync } from 'node:fs'
import { stat } from 'node:fs/promises'
import { glob, isDynamicPattern } from 'tinyglobby'
import { isBenchName } from '../job/bench-name.ts'

/**
 * Files as they were named; a folder gives the job files in it, a pattern those that match. What is none of these is left for
 * the reader to miss. A bench among jobs is left out, as a shell names it too for `*.yaml`.
 */
export async function findFiles(words: readonly string[]): Promise<readonly string[]> {
  const found = await Promise.all(words.map(filesOf))
  // One file by two names, or round a circle of links, is judged once.
  const places = found.flat().map(file => [placeOf(file), file] as const)
  const files = [...new Map(places.toReversed()).values()].reverse()
  const jobs = files.filter(file => !isBenchName(file))
  return jobs.length > 0 ? jobs : files
}

function placeOf(file: string): string {
  try {
    return realpathSync.native(file)
  } catch {
    return file
  }
}

async function filesOf(word: string): Promise<readonly string[]> {
  const there = await stat(word).catch(() => undefined)
  if (there?.isDirectory()) return inFolder(word)
  if (there !== undefined || !isDynamicPattern(word)) return [word]
  const matching = (await glob(word, { expandDirectories: false })).sort()
  return matching.length > 0 ? matching : [word]
}

/** A folder without any is left for the reader to miss too. */
async function inFolder(folder: string): Promise<readonly string[]> {
  const found = await glob('**/*.{yaml,yml}', {
    cwd: folder,
    expandDirectories: false,
    ignore: ['**/node_modules/**', '**/*.bench.{yaml,yml}']
  })
  const start = folder.replace(/\/+$/, '')
  return found.length === 0 ? [folder] : found.sort().map(file => `${start}/${file}`)
}
