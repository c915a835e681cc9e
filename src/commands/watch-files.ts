import { stat } from 'node:fs/promises'
import { setTimeout } from 'node:timers/promises'
import { findFiles } from './find-files.ts'

/** Often enough for somebody who looks from one window to the other. */
const EVERY_MS = 250

/**
 * Hands out the files that changed or came, whenever there are some. Looking at times and sizes works where a folder
 * is shared over a network and where an editor puts a new file in place of the old one.
 */
export async function* changes(words: readonly string[], stop: AbortSignal, everyMs = EVERY_MS): AsyncGenerator<readonly string[]> {
  let known = await marks(words)
  while (!stop.aborted) {
    await setTimeout(everyMs, undefined, { signal: stop }).catch(() => {})
    if (stop.aborted) return
    const now = await marks(words)
    const changed = [...now].filter(([file, mark]) => known.get(file) !== mark).map(([file]) => file)
    known = now
    if (changed.length > 0) yield changed
  }
}

/** Time and size of each file; one that is not there has none, and counts as changed when it comes back. */
async function marks(words: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const files = await findFiles(words)
  const pairs = await Promise.all(
    files.map(async file => {
      const there = await stat(file).catch(() => undefined)
      return [file, there === undefined ? '' : `${there.mtimeMs} ${there.size}`] as const
    })
  )
  return new Map(pairs)
}
