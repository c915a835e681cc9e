import type { Live } from '../../src/commands/describe.ts'
import { COMMANDS } from '../../src/commands/list.ts'
import { called } from '../../src/commands/program.ts'
import { keptIn } from './out-text.ts'

export interface Ran {
  /** Null where the words were not even read. */
  readonly exit: number | null
  readonly out: string
  readonly err: string
  /** What a watcher of the error stream was told. */
  readonly told: readonly string[]
}

/** Runs words in this process, with a text piped in, and keeps what they print. */
export async function ran(words: readonly string[], piped = '', live: Partial<Live> = {}): Promise<Ran> {
  const [out, err, told]: [string[], string[], string[]] = [[], [], []]
  const result = await called(COMMANDS, words, 'test', {
    out: keptIn(out),
    err: text => err.push(text),
    columns: 100,
    colour: () => false,
    live: {
      input: pieces(piped),
      progress: text => told.push(text),
      drained: () => Promise.resolve(),
      stop: new AbortController().signal,
      ...live
    }
  })
  return { exit: 'exit' in result ? result.exit : null, out: out.join(''), err: err.join(''), told }
}

/** As a pipe would hand it over: in pieces that do not end where a letter or a line does. */
async function* pieces(text: string): AsyncGenerator<Uint8Array> {
  const bytes = new TextEncoder().encode(text)
  for (let at = 0; at < bytes.length; at += 7) yield bytes.slice(at, at + 7)
}
