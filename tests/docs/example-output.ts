import { mkdtempSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll } from 'vitest'
import { COMMANDS } from '../../src/commands/list.ts'
import { called } from '../../src/commands/program.ts'
import { keptIn } from '../commands/out-text.ts'

export interface Output {
  /** Null where the words were not even read. */
  readonly exit: number | null
  readonly out: string
  readonly err: string
}

/** An example as a shell would split it: quotes keep words together. */
export function wordsOf(example: string): readonly string[] {
  return [...example.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quotedWords, word]) => quotedWords ?? word!)
}

/** Runs words in this process and keeps what they print. */
export async function outputOf(words: readonly string[], columns = 80): Promise<Output> {
  const out: string[] = []
  const err: string[] = []
  const streams = { out: keptIn(out), err: (text: string) => err.push(text), columns, colour: () => false }
  const result = await called(COMMANDS, words, 'test', streams)
  return { exit: 'exit' in result ? result.exit : null, out: out.join(''), err: err.join('') }
}

/** Examples name files as from the folder of the project: gives them one in which they may write. */
export function inExampleFolder(): void {
  const home = process.cwd()
  const folder = mkdtempSync(join(tmpdir(), 'fettle-examples-'))
  beforeAll(() => {
    symlinkSync(resolve(home, 'examples'), join(folder, 'examples'))
    process.chdir(folder)
  })
  afterAll(() => {
    process.chdir(home)
    rmSync(folder, { recursive: true })
  })
}
