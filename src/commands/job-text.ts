import { readFile } from 'node:fs/promises'
import type { Diagnostic } from '../quantity/diagnostic.ts'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a job file, or why it cannot be read. */
export async function jobText(file: string): Promise<string | Diagnostic> {
  try {
    return await readFile(file, 'utf8')
  } catch (error) {
    const reason = REASONS[(error as NodeJS.ErrnoException).code ?? '']
    if (reason === undefined) throw error
    return { found: reason, accepted: 'a job file that can be read', where: { file, line: null, column: null, path: '' } }
  }
}
