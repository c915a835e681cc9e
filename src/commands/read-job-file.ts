import { readFile } from 'node:fs/promises'
import type { Diagnostic } from '../quantity/diagnostic.ts'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a job file, or why it cannot be read: a fault of that file alone. */
export async function readJobFile(file: string): Promise<{ readonly text: string } | { readonly error: Diagnostic }> {
  try {
    return { text: await readFile(file, 'utf8') }
  } catch (error) {
    const found = REASONS[(error as NodeJS.ErrnoException).code ?? '']
    if (found === undefined) throw error
    const where = { file, line: null, column: null, path: '' }
    return { error: { found, accepted: 'a job file that can be read', where } }
  }
}
