// example: job files that are no job files: another encoding, a device, a circle of links, too large
import { existsSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readJobFile } from '../../src/commands/read-job-file.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-read-'))
const file = (name: string, bytes: Uint8Array): string => {
  writeFileSync(join(folder, name), bytes)
  return join(folder, name)
}
const readText = (path: string) => readJobFile(path, { input: process.stdin })
const TEXT = 'fettle: 1\njob: { title: ± }\n'

it('a mark of the encoding at the start is no part of the text', async () => {
  expect(await readText(file('marked.yaml', Buffer.from(`\ufeff${TEXT}`)))).toEqual({ text: TEXT, bench: null })
})

const WIDE = Buffer.from(`\ufeff${TEXT}`, 'utf16le')

it.each([
  ['utf-16.yaml', WIDE, 'text in UTF-16', 1],
  ['utf-16-high-first.yaml', Buffer.from(WIDE).swap16(), 'text in UTF-16', 1],
  ['utf-16-unmarked.yaml', WIDE.subarray(2), 'text in UTF-16', 1],
  ['latin-1.yaml', Buffer.from(TEXT, 'latin1'), 'bytes that are no UTF-8', 2],
  ['cut.yaml', Buffer.from(TEXT).subarray(0, -4), 'bytes that are no UTF-8', 2],
  ['large.yaml', Buffer.alloc(1_000_001, '#'), 'a file beyond 1 MB', null]
])('%s', async (name, bytes, found, line) => {
  expect(await readText(file(name, bytes))).toMatchObject({ error: { found, where: { file: join(folder, name), line } } })
})

it('a pipe without end', async () => {
  async function* endless(): AsyncGenerator<Uint8Array> {
    for (;;) yield Buffer.alloc(1 << 16, '#')
  }
  expect(await readJobFile('-', { input: endless() })).toMatchObject({ error: { found: 'a file beyond 1 MB', where: { file: '-' } } })
})

it('exactly as large as is allowed is read', async () => {
  expect(await readText(file('largest.yaml', Buffer.alloc(1_000_000, '#')))).toHaveProperty('text.length', 1_000_000)
})

it('a circle of links', async () => {
  symlinkSync('circle.yaml', join(folder, 'circle.yaml'))
  expect(await readText(join(folder, 'circle.yaml'))).toMatchObject({ error: { found: 'links that lead in a circle' } })
})

it.skipIf(!existsSync('/dev/zero'))('a device without end', async () => {
  expect(await readText('/dev/zero')).toMatchObject({ error: { found: 'a file beyond 1 MB' } })
})

it.skipIf(!existsSync('/proc/self/mem'))('a file that the system refuses', async () => {
  expect(await readText('/proc/self/mem')).toMatchObject({ error: { found: 'a file that the system refuses (EIO)' } })
})

it('a folder', async () => {
  expect(await readText(folder)).toMatchObject({ error: { found: 'a folder without job files' } })
})
