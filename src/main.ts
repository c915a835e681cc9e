import { once } from 'node:events'
import { fstatSync } from 'node:fs'
import type { Live, Out } from './commands/describe.ts'
import { filePieces } from './commands/file-pieces.ts'
import { COMMANDS } from './commands/list.ts'
import { called } from './commands/program.ts'
import { VERSION } from './version.ts'

const { stdout, stderr, env, argv } = process

/** A terminal's own width; a page of 100 columns where the output is piped. */
const columns = Number(env['COLUMNS']) || stdout.columns || 100

function colour(wanted: boolean): boolean {
  if (!wanted) return false
  if (env['FORCE_COLOR'] !== undefined) return env['FORCE_COLOR'] !== '0'
  return stdout.isTTY === true && !env['NO_COLOR'] && env['TERM'] !== 'dumb'
}

const gone = new AbortController()

let leaving: Promise<unknown> | undefined

/** One listener, however often output waits for its reader. */
function left(): Promise<unknown> {
  leaving ??= once(gone.signal, 'abort')
  return leaving
}

/** What a thread begins with; each is a program of its own. */
let threadFile = ''

const live: Live = {
  // Opening it costs time at every start.
  get input() {
    return fstatSync(0).isFile() ? filePieces(0) : process.stdin
  },
  progress: text => {
    if (stderr.isTTY) stderr.write(`\r\x1b[K${text.replace(/\p{C}/gu, '?')}`)
  },
  drained: async () => {
    if (stdout.writableNeedDrain) await Promise.race([once(stdout, 'drain'), left()])
  },
  stop: gone.signal,
  thread: async (piece, work) => {
    const { Worker } = await import('node:worker_threads')
    return new Worker(threadFile, { workerData: { piece, work } })
  }
}

async function main(): Promise<number> {
  const out: Out = (text, bytes) => stdout.write(text, bytes)
  const streams = { out, err: (text: string) => stderr.write(text), columns, colour, live }
  const result = await called(COMMANDS, argv.slice(2), VERSION, streams)
  if ('exit' in result) return result.exit
  const { errorDocument, faultsText } = await import('./report/refused.ts')
  stderr.write(faultsText(result.errors))
  if (argv.includes('--json')) {
    stdout.write(errorDocument(result))
  }
  return 2
}

/** A reader that went away (`| head`) is no fault of ours; a full disk must not pass for a verdict. */
stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') return gone.abort()
  stderr.write(`fettle: what was found could not be written: ${message}\n`)
  process.exit(2)
})
/** Nobody is left to tell. */
stderr.on('error', () => {})

function failed(error: unknown): number {
  const { name, message, stack } = error instanceof Error ? error : new Error(String(error))
  stderr.write(`fettle: a fault of this program, not of your input: ${name}: ${message}\nplease report it with the words you typed\n`)
  if (env['FETTLE_DEBUG']) stderr.write(`${stack}\n`)
  return 3
}

/** Does what was typed. */
export function start(file: string): void {
  threadFile = file
  void main()
    .catch(failed)
    .then(exit => {
      process.exitCode = exit
    })
}
