import { stat } from 'node:fs/promises'
import { setTimeout } from 'node:timers/promises'
import { findFiles } from './find-files.ts'
import { benchOf } from './read-job-file.ts'

/** Often enough for somebody who looks from one window to the other. */
const EVERY_MS = 250

/**
 * From now on hands out the files that changed or came, or whose bench did, whenever there are some. Looking at times and
 * sizes works where a folder is shared over a network and where an editor puts a new file in place of the old one.
 */
export async function changesFromNow(words: readonly string[], stop: AbortSignal, everyMs = EVERY_MS): Promise<AsyncGenerator<Files>> {
  return changesSince(await marks(words, new Map()), { words, stop, everyMs })
}

type Files = readonly string[]

interface Watching {
  readonly words: Files
  readonly stop: AbortSignal
  readonly everyMs: number
}

async function* changesSince(first: Marks, { words, stop, everyMs }: Watching): AsyncGenerator<Files> {
  let known = first
  while (!stop.aborted) {
    await setTimeout(everyMs, undefined, { signal: stop }).catch(() => {})
    if (stop.aborted) return
    const now = await marks(words, known)
    const changed = [...now].filter(([file, mark]) => differs(mark, known.get(file))).map(([file]) => file)
    known = now
    if (changed.length > 0) yield changed
  }
}

interface Mark {
  readonly own: string
  /** The bench that the job names, and its mark. */
  readonly bench: { readonly file: string; readonly mark: string } | null
}

type Marks = ReadonlyMap<string, Mark>

function differs({ own, bench }: Mark, before: Mark | undefined): boolean {
  return own !== before?.own || bench?.mark !== before.bench?.mark
}

async function marks(words: readonly string[], known: Marks): Promise<Marks> {
  const files = await findFiles(words)
  return new Map(await Promise.all(files.map(async file => [file, await markOf(file, known.get(file))] as const)))
}

/** A job is read for the name of its bench only when it changed itself. */
async function markOf(file: string, before: Mark | undefined): Promise<Mark> {
  const own = await stamp(file)
  const bench = own === before?.own ? before.bench?.file : own === '' ? null : await benchOf(file)
  return { own, bench: bench === undefined || bench === null ? null : { file: bench, mark: await stamp(bench) } }
}

/** Time and size of a file; what is no file, or not there, has none, and counts as changed when it comes back. */
async function stamp(file: string): Promise<string> {
  const there = await stat(file).catch(() => undefined)
  return there?.isFile() ? `${there.mtimeMs} ${there.size}` : ''
}
