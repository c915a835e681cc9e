import { readFile } from 'node:fs/promises'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Live } from './describe.ts'

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
  try {
    return { text: await readFile(file, 'utf8') }
  } catch (error) {
    return {
      error: { found: reasonOf(error), accepted: 'a job file that can be read', where: { file, line: null, column: null, path: '' } }
    }
  }
}

/** Why a file cannot be read, in words. */
export function reasonOf(error: unknown): string {
  const reason = REASONS[(error as NodeJS.ErrnoException).code ?? '']
  if (reason === undefined) throw error
  return reason
}

async function textOf(input: Live['input']): Promise<string> {
  const decoder = new TextDecoder()
  let text = ''
  for await (const part of input) text += typeof part === 'string' ? part : decoder.decode(part, { stream: true })
  return text + decoder.decode()
}
