import { existsSync } from 'node:fs'
import { rename, rm, writeFile } from 'node:fs/promises'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { quoted } from '../quantity/quoted.ts'

const REASONS: { readonly [code: string]: string } = {
  ENOENT: 'a folder that is not there',
  EACCES: 'a place that may not be written',
  EROFS: 'a place that may not be written',
  EISDIR: 'a folder',
  ENOSPC: 'a full disk',
  ENOTDIR: 'a file where a folder should be'
}

/** Writes a file whole or not at all; never over another unless told to. What stopped it comes back as a fault. */
export async function writeWhole(file: string, text: string, { over }: { readonly over: boolean }): Promise<Diagnostic | undefined> {
  const where = onCommandLine('--output')
  if (!over && existsSync(file))
    return { found: `${quoted(file)}, which is there already`, accepted: 'a new name, or --force as well', where }
  const beside = `${file}.${process.pid}.part`
  try {
    await writeFile(beside, text)
    await rename(beside, file)
    return undefined
  } catch (error) {
    await rm(beside, { force: true }).catch(() => {})
    const reason = REASONS[(error as NodeJS.ErrnoException).code ?? '']
    if (reason === undefined) throw error
    return { found: `${quoted(file)}: ${reason}`, accepted: 'a file that can be written', where }
  }
}
