import type { Diagnostic } from '../quantity/diagnostic.ts'
import { decoded, firstBytes } from './decoded.ts'
import { systemReason } from './system-reason.ts'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder without job files',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a job file, or why it cannot be read: a fault of that file alone. */
export async function readJobFile(file: string): Promise<{ readonly text: string } | { readonly error: Diagnostic }> {
  const where = { file, line: null, column: null, path: '' }
  try {
    const read = decoded(await firstBytes(file))
    return 'text' in read ? read : { error: { found: read.found, accepted: 'a job file in UTF-8, below 1 MB', where } }
  } catch (error) {
    const found = REASONS[(error as NodeJS.ErrnoException).code ?? ''] ?? systemReason(error)
    if (found === undefined) throw error
    return { error: { found, accepted: 'a job file that can be read', where } }
  }
}
