import { lstat, realpath, rename, rm, stat, writeFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { quoted } from '../quantity/quoted.ts'
import { systemReason } from './system-reason.ts'

/** Names of what is open, which may lead to a file by chance. */
const OPEN = /^\/(dev\/(std|fd\/)|proc\/)/

/** Writes a file whole or not at all; never over another unless told to. What stopped it comes back as a fault. */
export async function writeWhole(file: string, text: string, { over }: { readonly over: boolean }): Promise<Diagnostic | undefined> {
  const refused = (found: string, accepted: string) => ({ found: `${quoted(file)}${found}`, accepted, where: onCommandLine('--output') })
  const there = await stat(file)
    .catch(() => lstat(file))
    .catch(() => undefined)
  if (file === '-' || OPEN.test(resolve(file))) return refused(', which is no file', 'a file; for a pipe, leave --output out')
  if (there !== undefined && !there.isFile()) return refused(': a folder, a device or a broken link', 'a file')
  if (there !== undefined && !over) return refused(', which is there already', 'a new name, or --force as well')
  // A link stays a link: what it leads to is written.
  const target = await realpath(file).catch(() => file)
  const beside = `${target}.${process.pid}.part`
  try {
    // Never through a link that somebody laid there, and open to no more eyes than the old one.
    await writeFile(beside, text, { flag: 'wx', ...(there === undefined ? {} : { mode: there.mode & 0o777 }) })
    await rename(beside, target)
    return undefined
  } catch (error) {
    await rm(beside, { force: true }).catch(() => {})
    const reason = systemReason(error)
    if (reason === undefined) throw error
    return refused(`: ${reason}`, 'a file that can be written')
  }
}
