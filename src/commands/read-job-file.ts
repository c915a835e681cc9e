import { openSync } from 'node:fs'
import { dirname, isAbsolute, join } from 'node:path'
import type { BenchText } from '../job/bench.ts'
import { benchNamed } from '../job/bench-name.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { decoded, firstOf } from './decoded.ts'
import type { Live } from './describe.ts'
import { filePieces } from './file-pieces.ts'
import { systemReason } from './system-reason.ts'

type ReadText = { readonly text: string } | { readonly error: Diagnostic }
export type ReadJobText = { readonly text: string; readonly bench: BenchText | null } | { readonly error: Diagnostic }

/** The name of what is piped in. */
export const PIPED = '-'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder without job files',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a job file and of the bench it names, or why it cannot be read: a fault of that file alone. */
export async function readJobFile(file: string, { input }: Pick<Live, 'input'>): Promise<ReadJobText> {
  const textOf = (name: string) => readText(name, () => (name === PIPED ? firstOf(input) : bytesOf(name)))
  const read = await textOf(file)
  if ('error' in read) return read
  const bench = benchBeside(file, read.text)
  return { ...read, bench: bench === null ? null : { file: bench, ...(await textOf(bench)) } }
}

/** Where the bench lies that a job file names, if it names one and can be read. */
export async function benchOf(file: string): Promise<string | null> {
  const read = await readText(file, () => bytesOf(file))
  return 'text' in read ? benchBeside(file, read.text) : null
}

function benchBeside(file: string, text: string): string | null {
  const name = benchNamed(text)
  return name === null || isAbsolute(name) ? name : join(file === PIPED ? '.' : dirname(file), name)
}

async function bytesOf(file: string): ReturnType<typeof firstOf> {
  return firstOf(filePieces(openSync(file, 'r')))
}

async function readText(file: string, bytes: () => ReturnType<typeof firstOf>): Promise<ReadText> {
  try {
    const read = decoded(await bytes())
    return 'text' in read ? read : { error: fault(file, read.found, 'a job file in UTF-8, below 1 MB', read.line) }
  } catch (error) {
    return { error: fault(file, reasonOf(error), 'a job file that can be read', null) }
  }
}

function fault(file: string, found: string, accepted: string, line: number | null): Diagnostic {
  return { found, accepted, where: { file, line, column: line === null ? null : 1, path: '' } }
}

/** Why a file cannot be read, in words. */
export function reasonOf(error: unknown): string {
  const reason = REASONS[(error as NodeJS.ErrnoException).code ?? ''] ?? systemReason(error)
  if (reason === undefined) throw error
  return reason
}
