import { createReadStream } from 'node:fs'
import { readFile, stat } from 'node:fs/promises'
import { decoded } from '../job/decoded.ts'
import { GREATEST_BYTES, tooLarge } from '../job/form-limits.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Fault } from '../quantity/fault.ts'
import type { Live } from './describe.ts'

export type ReadJobText = { readonly text: string } | { readonly error: Diagnostic }

/** The name of what is piped in. */
export const PIPED = '-'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'no such file',
  EISDIR: 'a folder without job files',
  EACCES: 'a file that may not be read',
  ENOTDIR: 'no such file',
  ELOOP: 'a link that leads back to itself',
  ENAMETOOLONG: 'a name too long for a file'
}

/** The text of a file, or what kept it from being read. Of what is larger than any job, no more is read than shows that. */
export async function readJobFile(file: string, { input }: Pick<Live, 'input'>): Promise<ReadJobText> {
  try {
    const bytes = file === PIPED ? await upTo(GREATEST_BYTES, input) : await bytesOf(file)
    if ('found' in bytes) return { error: at(file, bytes, null) }
    const read = decoded(bytes)
    return 'text' in read ? read : { error: at(file, read.fault, read.line) }
  } catch (error) {
    return { error: at(file, { found: reasonOf(error), accepted: 'a job file that can be read' }, null) }
  }
}

function at(file: string, fault: Fault, line: number | null): Diagnostic {
  return { ...fault, where: { file, line, column: line === null ? null : 1, path: '' } }
}

/** Why a file cannot be read, in words. */
export function reasonOf(error: unknown): string {
  const reason = REASONS[(error as NodeJS.ErrnoException).code ?? '']
  if (reason === undefined) throw error
  return reason
}

/** A pipe or a device tells no size and may have no end. */
async function bytesOf(file: string): Promise<Uint8Array | Fault> {
  const there = await stat(file)
  if (!there.isFile() && !there.isDirectory()) return upTo(GREATEST_BYTES, createReadStream(file))
  return there.size > GREATEST_BYTES ? tooLarge(there.size) : readFile(file)
}

async function upTo(most: number, input: AsyncIterable<string | Uint8Array>): Promise<Uint8Array | Fault> {
  const parts: Uint8Array[] = []
  let bytes = 0
  for await (const part of input) {
    parts.push(typeof part === 'string' ? Buffer.from(part) : part)
    bytes += part.length
    if (bytes > most) return { ...tooLarge(bytes), found: 'more piped in than any job has' }
  }
  return Buffer.concat(parts)
}
