import type { Diagnostic } from '../quantity/diagnostic.ts'
import { decoded, firstBytes } from './decoded.ts'
import type { Live } from './describe.ts'
import { systemReason } from './system-reason.ts'

export type ReadJobText = { readonly text: string } | { readonly error: Diagnostic }

/** The name of what is piped in. */
export const PIPED = '-'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder without job files',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a file, or what kept it from being read. */
export async function readJobFile(file: string, { input }: Pick<Live, 'input'>): Promise<ReadJobText> {
  if (file === PIPED) return { text: await textOf(input) }
  const where = { file, line: null, column: null, path: '' }
  try {
    const read = decoded(await firstBytes(file))
    return 'text' in read ? read : { error: { found: read.found, accepted: 'a job file in UTF-8, below 1 MB', where } }
  } catch (error) {
    return { error: { found: reasonOf(error), accepted: 'a job file that can be read', where } }
  }
}

/** Why a file cannot be read, in words. */
export function reasonOf(error: unknown): string {
  const reason = REASONS[(error as NodeJS.ErrnoException).code ?? ''] ?? systemReason(error)
  if (reason === undefined) throw error
  return reason
}

async function textOf(input: Live['input']): Promise<string> {
  const decoder = new TextDecoder()
  let text = ''
  for await (const part of input) text += typeof part === 'string' ? part : decoder.decode(part, { stream: true })
  return text + decoder.decode()
}
