import { dirname, isAbsolute, join } from 'node:path'
import type { BenchText } from '../job/bench.ts'
import { benchNamed } from '../job/bench-name.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { decoded, firstBytes, firstOf } from './decoded.ts'
import type { Live } from './describe.ts'
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
export async function readJobFile(file: string, live: Pick<Live, 'input'>): Promise<ReadJobText> {
  const read = await readText(file, live)
  if ('error' in read) return read
  const name = benchNamed(read.text)
  if (name === null) return { ...read, bench: null }
  const beside = join(file === PIPED ? '.' : dirname(file), name)
  const bench = isAbsolute(name) ? name : beside
  return { ...read, bench: { file: bench, ...(await readText(bench, live)) } }
}

async function readText(file: string, { input }: Pick<Live, 'input'>): Promise<ReadText> {
  try {
    const read = decoded(file === PIPED ? await firstOf(input) : await firstBytes(file))
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
